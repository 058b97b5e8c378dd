namespace FieldSession.Reporting;

/// <summary>What the report says of car, tyres, meter and people.</summary>
internal static class FactsWords
{
    public const string Title = "Car, tyres, meter and people";
    public const string TyreSize = "Tyre size";
    public const string TyresMade = "Tyres made";
    public const string ColdPressures = "Cold pressures";
    public const string MeterAndClass = "Meter and class";
    public const string MeterPosition = "Position of the meter";
    public const string WhoDrove = "Who drove";
    public const string WhoTyped = "Who typed";
    public const string LocalTime = "Local time";
    public const string NotPlanned = "not planned";

    public static string NotWrittenDown(string missing) => $"Not written down: {missing}.";

    public static string TypedAndFlagged(string name) => $"{name}, who also gave the flags";

    public static string AheadOfUtc(string offset) => $"UTC{offset}; times in this report are UTC unless both are shown";

    public static string FrontAndRear(string front, string rear) => $"front {front} bar, rear {rear} bar at 20 degC";

    public static string DroveAllRuns(string driver) => $"{driver}, all runs";

    public static string DroveRuns(string driver, IEnumerable<int> runs) => $"{driver} runs {string.Join(", ", runs)}";
}
