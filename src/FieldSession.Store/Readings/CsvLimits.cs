namespace FieldSession.Store.Readings;

/// <summary>
/// How large a CSV may be before it is refused unread. A field day has some hundred readings; the limits are far above any real file and
/// far below what would exhaust a laptop.
/// </summary>
public static class CsvLimits
{
    /// <summary>Most bytes of a file: 512 MiB.</summary>
    public const long Bytes = 512L << 20;

    /// <summary>Most rows below the header.</summary>
    public const int Rows = 5_000_000;

    /// <summary>Most columns.</summary>
    public const int Columns = 1000;

    /// <summary>Most bytes of one row, quoted line breaks included: 1 MiB.</summary>
    public const int RecordBytes = 1 << 20;

    /// <summary>Most runs.</summary>
    public const int Runs = 100_000;

    /// <summary>Most segments.</summary>
    public const int Segments = 100_000;

    /// <summary>
    /// Most runs times segments. The comparison's cost grows with this, and with the cube of the smaller of the two, which this holds below
    /// 2237.
    /// </summary>
    public const int Cells = 5_000_000;

    /// <summary>Most codes; every pair of them is compared.</summary>
    public const int Codes = 50;

    /// <summary>Most codes times segments: every one of these has a line of its own in the answer.</summary>
    public const int CodeSegments = 200_000;

    /// <summary>Most cars, and most sessions; each is a column of the run model.</summary>
    public const int Groups = 50;

    /// <summary>Most runs times columns of the run model, one for every code, car and session.</summary>
    public const int RunColumns = 1_000_000;

    /// <summary>Most runs where some are driven side by side; every slot is a column of the run model.</summary>
    public const int RunsSideBySide = 1000;

    /// <summary>
    /// Longest name of a code, segment, kind, car, slot, session or cause, in characters; a route may have names as long.
    /// </summary>
    public const int NameLength = 120;
}

/// <summary>A stream that counts what is read from it and ends once that exceeds the largest file allowed.</summary>
/// <param name="inner">The stream that is read.</param>
internal sealed class CountedStream(Stream inner) : Stream
{
    /// <summary>Bytes read so far; above <see cref="CsvLimits.Bytes"/>: the rest was not read.</summary>
    public long Count { get; private set; }

    /// <summary>Whether the file begins with the mark of UTF-16 or UTF-32, which a parser would quietly follow.</summary>
    public bool IsWide { get; private set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => Count;
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (Count > CsvLimits.Bytes)
        {
            return 0;
        }

        int read = inner.Read(buffer);
        IsWide |= Count == 0 && read >= 2 && ((buffer[0], buffer[1]) is (0xFF, 0xFE) or (0xFE, 0xFF) or (0, 0));
        Count += read;
        return read;
    }

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }
}

/// <summary>The columns of a readings CSV and their places in <see cref="Names"/>.</summary>
internal static class ReadingColumns
{
    /// <summary>Number of the run, in driven order.</summary>
    public const int Run = 0;

    /// <summary>Code that was driven.</summary>
    public const int Code = 1;

    /// <summary>Name of the segment.</summary>
    public const int Segment = 2;

    /// <summary>Kind of surface.</summary>
    public const int Kind = 3;

    /// <summary>Lower end of the range, dB.</summary>
    public const int Low = 4;

    /// <summary>Upper end of the range, or the peak, dB.</summary>
    public const int High = 5;

    /// <summary>Whether the reading is left out, and why.</summary>
    public const int Spoilt = 6;

    /// <summary>From the first run's start to the middle of this run.</summary>
    public const int Minutes = 7;

    /// <summary>How the segment is read.</summary>
    public const int Class = 8;

    /// <summary>Car of the run.</summary>
    public const int Car = 9;

    /// <summary>Runs driven side by side share it.</summary>
    public const int Slot = 10;

    /// <summary>Session of the run.</summary>
    public const int Session = 11;

    /// <summary>How long a run stays on the segment.</summary>
    public const int Seconds = 12;

    /// <summary>Runs of the order as planned, then after each time it was lengthened when a comparison could be seen.</summary>
    public const int OrderRuns = 13;

    /// <summary>How many of the names have to be in the header.</summary>
    public const int Required = 7;

    /// <summary>The names, in the order of the places.</summary>
    public static IReadOnlyList<string> Names { get; } =
        Array.AsReadOnly([
            "run",
            "code",
            "segment",
            "kind",
            "low",
            "high",
            "spoilt",
            "minutes",
            "class",
            "car",
            "slot",
            "session",
            "seconds",
            "order_runs",
        ]);
}
