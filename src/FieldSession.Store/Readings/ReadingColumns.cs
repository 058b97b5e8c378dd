namespace FieldSession.Store.Readings;

/// <summary>The columns of a readings CSV and their places in <see cref="Names"/>.</summary>
internal static class ReadingColumns
{
    public const int Run = 0;
    public const int Code = 1;
    public const int Segment = 2;
    public const int Kind = 3;
    public const int Low = 4;
    public const int High = 5;
    public const int Spoilt = 6;
    public const int Minutes = 7;
    public const int Class = 8;
    public const int Car = 9;
    public const int Slot = 10;
    public const int Session = 11;
    public const int Seconds = 12;

    /// <summary>How many of the names have to be in the header.</summary>
    public const int Required = 7;

    /// <summary>The names, in the order of the places.</summary>
    public static IReadOnlyList<string> Names { get; } =
        Array.AsReadOnly(["run", "code", "segment", "kind", "low", "high", "spoilt", "minutes", "class", "car", "slot", "session", "seconds"]);
}
