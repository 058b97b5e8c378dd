namespace FieldSession.Tests.Faults;

/// <summary>How sure a change of a file is to be on the disk.</summary>
internal enum Sureness
{
    /// <summary>Not flushed yet.</summary>
    Pending,

    /// <summary>A flush after it was answered well.</summary>
    Safe,

    /// <summary>
    /// A flush after it failed. Linux then takes the pages for clean, so that no later flush writes them (kernel documentation,
    /// vfs, "writeback errors"; first told of as "fsyncgate", 2018; from memory): it may be there or not, for ever.
    /// </summary>
    Doubtful,
}

/// <summary>A file as the record tells it: what was safe at the beginning, and every change since.</summary>
/// <param name="first">Its bytes at the beginning.</param>
internal sealed class RecordedFile(byte[] first)
{
    /// <summary>The smallest piece that a disk writes whole.</summary>
    public const int Sector = 512;

    private readonly List<(CallMade Call, int Place, Sureness Is)> _changes = [];

    /// <summary>How many changes are not safe.</summary>
    public int Unsure => _changes.Count(change => change.Is != Sureness.Safe);

    /// <summary>A change.</summary>
    /// <param name="call">What was called.</param>
    /// <param name="place">Its place among all calls.</param>
    public void Change(CallMade call, int place) => _changes.Add((call, place, Sureness.Pending));

    /// <summary>A flush.</summary>
    public void Flush(bool isWell)
    {
        for (int i = 0; i < _changes.Count; i++)
        {
            if (_changes[i].Is == Sureness.Pending)
            {
                _changes[i] = _changes[i] with { Is = isWell ? Sureness.Safe : Sureness.Doubtful };
            }
        }
    }

    /// <summary>What a power cut leaves of it.</summary>
    /// <param name="survives">What becomes of an unsafe change: whether it is there (1), is not (0), or which sectors are (a seed
    /// beyond).</param>
    public byte[] After(Func<int, int> survives)
    {
        MemoryStream file = new();
        file.Write(first);
        foreach ((CallMade call, int place, Sureness isSure) in _changes)
        {
            int fate = isSure == Sureness.Safe ? 1 : survives(place);
            if (fate != 0)
            {
                Apply(file, call, fate);
            }
        }

        return file.ToArray();
    }

    private static void Apply(MemoryStream file, CallMade call, int fate)
    {
        if (call.Name is "ftruncate" or "trunc")
        {
            file.SetLength(call.Name == "trunc" ? 0 : call.At);
            return;
        }

        Random sectors = new(fate);
        for (int from = 0; from < call.Bytes.Length; )
        {
            int length = (int)Math.Min(call.Bytes.Length - from, Sector - ((call.At + from) % Sector));
            if (fate == 1 || sectors.Next(2) == 0)
            {
                file.SetLength(Math.Max(file.Length, call.At + from + length));
                file.Position = call.At + from;
                file.Write(call.Bytes.AsSpan(from, length));
            }

            from += length;
        }
    }
}
