namespace FieldSession.Store.Exports;

/// <summary>What an export says in its files, and why it is refused.</summary>
internal static class ExportWords
{
    // the descriptor
    public const string PackageDescription = "Every table of a blind comparison of tyre specs on the road.";
    public const string KeyIsNotOpen = "The key is not open: who is who is in no file.";
    public const string KeyIsOpen = "The key is open: key.csv says who is who.";
    public const string ApostropheGuardsFormulas = "An apostrophe goes before a text that a spreadsheet would take for a formula; numbers are never touched.";

    // the files
    public const string PlanDescription = "What was decided before the first run, in the words of plan.toml; the route is in segments.csv.";
    public const string ComparisonDescription = "The blind comparison: what 'compare STUDY --json' prints.";
    public const string SummaryDescription = "The blind comparison in words, by code only, and the journal's head hash.";
    public const string JournalDescription = "Every line of the journal. 'hash' is the SHA-256 of the UTF-8 text in 'json', which is itself a JSON object; its 'prev' names the hash of the line before.";

    public static string JournalHead(ExportSource source, string headHash) => $"journal: {source.Lines.Count} lines, head {headHash}";

    // SQL
    public const string StudyColumnDescription = "which study: hash of its journal's first line, 64 hex digits, the same in every row of an export";
    public const string SqlHead = "-- The tables of exports in PostgreSQL, made by 'fieldsession schema postgresql' from the descriptions of datapackage.json. Load with load.sh.";
    public const string SqlInPlaceHead = "-- The tables of exports for DuckDB, which reads the folders in place; made by 'fieldsession schema duckdb'. First: SET VARIABLE exports = 'FOLDER OF EXPORT FOLDERS';";

    // words in the files
    public const string NotesGoOn = "... (notes.csv has all)";

    public static string OwnTextIsMissing(string name) => $"the template {name} is not in the program";

    // why a file is hidden
    public static string PredictionsStayHidden(string namesStillToPredict) => $"predictions stay hidden until all are locked; still open: {namesStillToPredict}";

    public const string RingStaysCovered = "what recordings hold stays covered until the last prediction is locked";
    public const string RatingsStayCovered = "ratings stay covered until all have stored theirs, or 'ratings closed'";
    public const string ChoicesStayCovered = "choices and the order of their trials stay covered until their set is at its planned end";

    // why nothing is written
    public static string ForeignFileIsInTheWay(string path) => $"{path}: this file is not from an earlier export. Nothing was changed. Move it away, or give another folder.";

    public static string FolderIsFile(string folder) => $"{folder}: this is a file. Nothing was changed. Give a folder to write into.";

    public static string CantBeWritten(string path, Exception fault) => $"{path}: can't be written ({fault.Message}). Nothing was overwritten. Make room, or give a folder that may be written to.";

    public static string LeftUnfinished(string path, Exception fault, string unfinished) => $"{path}: can't be given its name ({fault.Message}). The study is not touched by it; the files that end in '{unfinished}' are whole. Export once more.";

    public static string NameIsTaken(string path) => $"{path}: something is there already. Nothing was changed. Give a free name.";
}
