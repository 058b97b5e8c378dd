namespace FieldSession.Store.Readings;

/// <summary>
/// How large a CSV may be before it is refused unread. A field day has some hundred readings; the limits are far above any real file and far
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

    /// <summary>Most runs.</summary>
    public const int Runs = 100_000;

    /// <summary>Most segments.</summary>
    public const int Segments = 100_000;

    /// <summary>
    /// Most runs times segments. The comparison's cost grows with this, and with the cube of the smaller of the two, which this holds below 2237.
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

    /// <summary>Longest name of a code, segment, kind, car, slot, session or cause, in characters; a route may have names as long.</summary>
    public const int NameLength = 120;
}
