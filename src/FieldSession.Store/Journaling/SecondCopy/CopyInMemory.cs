namespace FieldSession.Store.Journaling;

/// <summary>
/// A copy of a file in memory that LiteDB may write to while it reads. A damaged page number can lead it gigabytes beyond the end: what is
/// written there is dropped and noted, so that reading a damaged file costs no more than reading a sound one.
/// </summary>
internal sealed class CopyInMemory : MemoryStream
{
    private readonly long _mostBytes;

    /// <param name="bytes">The file.</param>
    /// <param name="mostBytes">How long it may become.</param>
    public CopyInMemory(byte[] bytes, long mostBytes)
        : base(bytes.Length)
    {
        _mostBytes = mostBytes;
        base.Write(bytes, 0, bytes.Length);
        Position = 0;
    }

    /// <summary>Whether something was to be written beyond what it may become.</summary>
    public bool WasToGrowTooFar { get; private set; }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        if (Fits(Position + count))
        {
            base.Write(buffer, offset, count);
        }
    }

    /// <inheritdoc/>
    public override void SetLength(long value)
    {
        if (Fits(value))
        {
            base.SetLength(value);
        }
    }

    private bool Fits(long end)
    {
        WasToGrowTooFar |= end > _mostBytes;
        return end <= _mostBytes;
    }
}
