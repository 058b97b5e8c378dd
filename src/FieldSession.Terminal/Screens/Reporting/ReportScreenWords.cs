namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>What the report screen says.</summary>
internal static class ReportScreenWords
{
    public const string NotWritableHere = "the report can't be written here; use 'report' from the shell";

    public static string HowToWrite(string nextStep) => $"w: writes it to its file; {(nextStep.Length == 0 ? "a note: '; words'" : nextStep)}";

    public static string NotWritten(Exception refused) => $"not written: {refused.Message}; nothing was overwritten, make room or free the file, then try again";
}
