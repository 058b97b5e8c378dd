namespace FieldSession.Store.Readings;

/// <summary>
/// How large a CSV may be before it is refused unread. A field day has some hundred readings; the limits stand far above any real file and far
/// below what would exhaust a laptop.
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

    /// <summary>Most runs; the comparison's cost grows with the cube of the runs of a code.</summary>
    public const int Runs = 2000;

    /// <summary>Most segments.</summary>
    public const int Segments = 2000;

    /// <summary>Most codes; every pair of them is compared.</summary>
    public const int Codes = 50;

    /// <summary>Longest name of a code, segment, kind, car, slot, session or cause, in characters; a route may have names as long.</summary>
    public const int NameLength = 120;
}
