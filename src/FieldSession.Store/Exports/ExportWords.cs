namespace FieldSession.Store.Exports;

/// <summary>What an export says in its files, and why it is refused.</summary>
internal static class ExportWords
{
    public const string NotesGoOn = "... (notes.csv has all)";
    public const string SpoiltPutBack = "spoilt put back";
    public const string RunLeftOut = "run left out";
    public const string SegmentLeftOut = "segment left out";
    public const string BlindComparisonWhatCompareStudyPrints = "The blind comparison: what 'compare STUDY --json' prints.";
    public const string EveryTableOfBlindComparisonOfTyreSpecs = "Every table of a blind comparison of tyre specs on the road.";
    public const string KeyIsNotOpen = "The key is not open: who is who stands in no file.";
    public const string KeyIsOpen = "The key is open: key.csv says who is who.";
    public const string ApostropheGoesBeforeTextThatSpreadsheetWouldTake = "An apostrophe goes before a text that a spreadsheet would take for a formula; numbers are never touched.";
    public const string RatingsStayCoveredUntilAllHaveStoredTheirs = "ratings stay covered until all have stored theirs, or 'ratings closed'";
    public const string ChoicesStayCoveredUntilTheirSetIsAtIts = "choices stay covered until their set is at its planned end";
    public const string EveryLineOfJournal = "Every line of the journal. 'hash' is the SHA-256 of the UTF-8 text in 'json', which is itself a JSON object; its 'prev' names the hash of the line before.";
    public const string WhatWasDecidedBeforeFirstRun = "What was decided before the first run, in the words of plan.toml; the route stands in segments.csv.";
    public const string BlindComparisonInWords = "The blind comparison in words, by code only, and the journal's head hash.";

    public static string AndFileThatNoEarlierExportWroteLiesThere(string pathOf) => $"{pathOf}: a file that no earlier export wrote lies there. Nothing was changed. Move it away, or give another folder.";

    public static string PredictionsStayHiddenUntilAllAreLocked(string stillToPredict) => $"predictions stay hidden until all are locked; still open: {stillToPredict}";

    public static string AndThisIsFile(string folder) => $"{folder}: this is a file. Nothing was changed. Give a folder to write into.";

    public static string AndCantBeWritten(string path, Exception fault) => $"{path}: can't be written ({fault.Message}). Nothing was overwritten. Make room, or give a folder that may be written to.";

    public static string AndSomethingLiesThereAlready(string path) => $"{path}: something lies there already. Nothing was changed. Give a name that is free.";

    public static string JournalLinesHead(ExportSource source, string more) => $"journal: {source.Lines.Count} lines, head {more}";
}
