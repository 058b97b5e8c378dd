namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>What the report screen says.</summary>
internal static class ReportScreenWords
{
    public const string ReportCantBeWrittenHere = "the report can't be written here; use 'report' from the shell";

    public static string WritesItToItsFile(string more) => $"w: writes it to its file{more}";

    public static string NotWrittenNothingWasOverwrittenMake(Exception refused) => $"not written: {refused.Message}; nothing was overwritten, make room or free the file, then try again";
}
