namespace FieldSession.Reporting;

/// <summary>What the table of readings says.</summary>
internal static class MapWords
{
    public const string Title = "The readings, run by segment";
    public const string Late = " late";
    public const string Filled = "filled";
    public const string Corrected = "corrected";
    public const string TypedLater = "later";

    public static string HowToRead(string codes) =>
        $"As typed, dB(A), for {codes}. Struck through with its cause: spoilt, left out. Empty: missed. "
        + "+ and -: 1 dB or more above or below the mean of the segment; ++ and --: 2 dB or more. The line beside a segment shows its clean levels from column to column.";
}
