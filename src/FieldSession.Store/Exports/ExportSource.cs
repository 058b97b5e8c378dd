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
    public IReadOnlyList<VerdictLine> Verdicts => field ??= StudyVerdicts.Of(Study, Comparison, EarFindings.Of(Study, StudyTerms.Of(Study)), Key, Ring);

    /// <summary>What the recordings say; null: there are none, or the ring is still covered.</summary>
    public RingFinding? Ring { get; } = RingFinding.Of(study);

    /// <summary>Why nobody may read what the journal holds of recordings yet; null: nothing is covered.</summary>
    public string? RingHiddenBecause => RingCover.IsOpen(Study) || (Study.Recordings.IsEmpty && !RingCover.HasTypedBands(Study)) ? null : ExportWords.RingStaysCovered;

    /// <summary>Why nobody may read predictions yet; null: nobody's is hidden.</summary>
    public string? PredictionsHiddenBecause => Study is { Opening: null, Predictions.Count: > 0 } && Study.StillToPredict.Any()
        ? ExportWords.PredictionsStayHidden(string.Join(", ", Study.StillToPredict.Select(member => member.Name)))
        : null;

    /// <summary>Why nobody may read the journal's ratings and choices yet; null: none is covered.</summary>
    public string? EarHiddenBecause => RatingCover.Open(Study).Count() < Study.Ratings.Count
        ? ExportWords.RatingsStayCovered
        : Study.ChoiceSets.Any(set => (set.IsSealed || set.Choices.Count > 0) && !set.IsShown(Study))
            ? ExportWords.ChoicesStayCovered
            : null;

    /// <summary>What a logbook holds now.</summary>
    public static ExportSource Of(Logbook logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        // folded again, for the checks' answers hold numbers in words
        return NumberForm.OfFiles(() => new ExportSource(Logbook.Fold(logbook.Lines), logbook.Lines, OpenedKey.In(logbook.Entries)));
    }
}
