namespace FieldSession.Store.Readings;

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
        Array.AsReadOnly(["run", "code", "segment", "kind", "low", "high", "spoilt", "minutes", "class", "car", "slot", "session", "seconds", "order_runs"]);
}
