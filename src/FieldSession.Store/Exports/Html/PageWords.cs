namespace FieldSession.Store.Exports.Html;

/// <summary>What the report's page says beside the report.</summary>
internal static class PageWords
{
    public const string TemplateReportIsNotInProgram = "the template report.html.liquid is not in the program";
    public const string ProgramsOwnTemplate = "the program's own template";
    public const string MiddleOfRun = "middle of the run, UTC";
    public const string MeanLevelDb = "mean level, dB(A)";
    public const string AndBarItsInterval = "; bar: its 95 % interval";
    public const string AndShadedMarginThatDoesNotMatter = "; shaded: the margin that does not matter";
    public const string MarkRunWithItsNumberBroken = "A mark a run, with its number; broken lines: the drift of the day on one and the same spec.";
    public const string MarkRunWithItsNumber = "A mark a run, with its number.";

    public static string AndThisIsNoTemplate(string name, string fault) => $"{name}: this is no template ({fault}). Nothing was written. 'fieldsession report --template-out FILE' writes one to start from.";

    public static string AndCantBeReadAsTemplate(string path, Exception fault) => $"{path}: can't be read as a template ({fault.Message}). Nothing was written. Give a text file in UTF-8.";

    public static string AndItAsksForAnotherFile(string name, FileNotFoundException fault) => $"{name}: it asks for another file, '{fault.Message}'. Nothing was written. A template is one file: put the text into it.";

    public static string AndItNeverEnds(string name, int mostSteps) => $"{name}: it never ends, or takes more than {mostSteps} steps. Nothing was written. Look at its loops.";

    public static string AndNothingWasWrittenListsWhatTemplate(string name, Exception fault) => $"{name}: {fault.Message.TrimEnd('.')}. Nothing was written. docs/report.md lists what a template may name.";

    public static string ThereIsNoHere(string name, string keys) => $"there is no '{name}' here, but {keys}";
}
