using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Store.Exports;

/// <summary>What an export is drawn from: the study, its journal, its comparison, and, once it was opened, the key.</summary>
/// <param name="study">The study.</param>
/// <param name="lines">Every line of its journal, in order.</param>
/// <param name="key">Who is who; null: the key is not open.</param>
public sealed class ExportSource(Study study, IReadOnlyList<Line> lines, OpenedKey? key)
{
    /// <summary>The study.</summary>
    public Study Study { get; } = study;

    /// <summary>Every line of the journal, in order.</summary>
    public IReadOnlyList<Line> Lines { get; } = lines;

    /// <summary>Which study it is; null: nothing was written yet.</summary>
    public StudyIdentity? Identity { get; } = StudyState.IdentityOf(lines);

    /// <summary>Who is who; null: the key is not open.</summary>
    public OpenedKey? Key { get; } = key;

    /// <summary>The readings as the comparison sees them.</summary>
    public MeasuredDay Day { get; } = StudyReadings.Of(study);

    /// <summary>The comparison on the terms that the plan fixed.</summary>
    public Comparison Comparison => field ??= BlindComparison.InFull(Day, StudyTerms.Of(Study));

    /// <summary>The lines of the verdicts, by code.</summary>
    public IReadOnlyList<VerdictLine> Verdicts =>
        field ??= StudyVerdicts.Of(Study, Comparison, EarFindings.Of(Study, StudyTerms.Of(Study)), Key, Ring);

    /// <summary>What the recordings say; null: there are none, or the ring is still covered.</summary>
    public RingFinding? Ring { get; } = RingFinding.Of(study);

    /// <summary>Why nobody may read what the journal holds of recordings yet; null: nothing is covered.</summary>
    public string? RingHiddenBecause =>
        RingCover.IsOpen(Study) || (Study.Recordings.IsEmpty && !RingCover.HasTypedBands(Study)) ? null : ExportWords.RingStaysCovered;

    /// <summary>Why nobody may read predictions yet; null: nobody's is hidden.</summary>
    public string? PredictionsHiddenBecause =>
        Study is { Opening: null, Predictions.Count: > 0 } && Study.StillToPredict.Any()
            ? ExportWords.PredictionsStayHidden(string.Join(", ", Study.StillToPredict.Select(member => member.Name)))
            : null;

    /// <summary>Why nobody may read the journal's ratings and choices yet; null: none is covered.</summary>
    public string? EarHiddenBecause =>
        RatingCover.Open(Study).Count() < Study.Ratings.Count ? ExportWords.RatingsStayCovered
        : Study.ChoiceSets.Any(set => (set.IsSealed || set.Choices.Count > 0) && !set.IsShown(Study)) ? ExportWords.ChoicesStayCovered
        : null;

    /// <summary>What a logbook holds now.</summary>
    public static ExportSource Of(Logbook logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        // folded again, for the checks' answers hold numbers in words
        return NumberForm.OfFiles(() => new ExportSource(Logbook.Fold(logbook.Lines), logbook.Lines, OpenedKey.In(logbook.Entries)));
    }
}

/// <summary>What an export says in its files, and why it is refused.</summary>
internal static class ExportWords
{
    // the descriptor
    public const string PackageDescription = "Every table of a blind comparison of tyre specs on the road.";
    public const string KeyIsNotOpen = "The key is not open: who is who is in no file.";
    public const string KeyIsOpen = "The key is open: key.csv says who is who.";
    public const string ApostropheGuardsFormulas =
        "An apostrophe goes before a text that a spreadsheet would take for a formula; numbers are never touched.";

    // the files
    public const string PlanDescription = "What was decided before the first run, in the words of plan.toml; the route is in segments.csv.";
    public const string ComparisonDescription = "The blind comparison: what 'compare STUDY --json' prints.";
    public const string SummaryDescription = "The blind comparison in words, by code only, and the journal's head hash.";
    public const string JournalDescription =
        "Every line of the journal. 'hash' is the SHA-256 of the UTF-8 text in 'json', which is itself a JSON object; "
        + "its 'prev' names the hash of the line before.";

    public static string JournalHead(ExportSource source, string headHash) => $"journal: {source.Lines.Count} lines, head {headHash}";

    // SQL
    public const string StudyColumnDescription =
        "which study: hash of its journal's first line, 64 hex digits, the same in every row of an export";
    public const string SqlHead =
        "-- The tables of exports in PostgreSQL, made by 'fieldsession schema postgresql' from the descriptions of "
        + "datapackage.json. Load with load.sh.";
    public const string SqlInPlaceHead =
        "-- The tables of exports for DuckDB, which reads the folders in place; made by 'fieldsession schema duckdb'. "
        + "First: SET VARIABLE exports = 'FOLDER OF EXPORT FOLDERS';";

    // words in the files
    public const string NotesGoOn = "... (notes.csv has all)";

    public static string OwnTextIsMissing(string name) => $"the template {name} is not in the program";

    // why a file is hidden
    public static string PredictionsStayHidden(string namesStillToPredict) =>
        $"predictions stay hidden until all are locked; still open: {namesStillToPredict}";

    public const string RingStaysCovered = "what recordings hold stays covered until the last prediction is locked";
    public const string RatingsStayCovered = "ratings stay covered until all have stored theirs, or 'ratings closed'";
    public const string ChoicesStayCovered = "choices and the order of their trials stay covered until their set is at its planned end";

    // why nothing is written
    public static string ForeignFileIsInTheWay(string path) =>
        $"{path}: this file is not from an earlier export. Nothing was changed. Move it away, or give another folder.";

    public static string FolderIsFile(string folder) => $"{folder}: this is a file. Nothing was changed. Give a folder to write into.";

    public static string CantBeWritten(string path, Exception fault) =>
        $"{path}: can't be written ({fault.Message}). Nothing was overwritten. Make room, or give a folder that may be written to.";

    public static string LeftUnfinished(string path, Exception fault, string unfinished) =>
        $"{path}: can't be given its name ({fault.Message}). The study is not touched by it; the files that end in "
        + $"'{unfinished}' are whole. Export once more.";

    public static string NameIsTaken(string path) => $"{path}: something is there already. Nothing was changed. Give a free name.";
}
