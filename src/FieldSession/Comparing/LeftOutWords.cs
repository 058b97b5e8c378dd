namespace FieldSession.Comparing;

/// <summary>Why readings are left out, also a cause in readings.csv.</summary>
internal static class LeftOutWords
{
    // also a cause in readings.csv
    public const string BracketDrivenAgain = "bracket driven again";
    public const string RunAborted = "run aborted";
    public const string FilledAtStop = "filled at the stop";
}
