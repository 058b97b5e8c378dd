namespace FieldSession.Store.Journaling;

/// <summary>LiteDB's data file. The log reaches the disk before any page it would have to restore is overwritten.</summary>
internal sealed class PageStream(IDiskFile file, LogStream log) : DurableStream(file)
{
    public override void SetLength(long value)
    {
        log.Flush();
        base.SetLength(value);
    }

    protected override void Put(ReadOnlySpan<byte> bytes, long at)
    {
        log.Flush();
        base.Put(bytes, at);
    }
}
