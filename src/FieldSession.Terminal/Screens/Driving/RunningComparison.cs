using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>One code on one segment: what was read so far, and the difference from the reference.</summary>
/// <param name="Code">The code.</param>
/// <param name="LowDb">Lowest level of its clean readings, dB; null: none.</param>
/// <param name="HighDb">Highest level of its clean readings, dB; null: none.</param>
/// <param name="Difference">Code minus reference; null: not known yet, or this is the reference.</param>
internal sealed record CodeOnSegment(SpecCode Code, double? LowDb, double? HighDb, Estimate? Difference);

/// <summary>A row of the running comparison.</summary>
/// <param name="Segment">The segment.</param>
/// <param name="Codes">The codes, reference first; empty while the row is covered.</param>
/// <param name="WhyCovered">Why the row is covered; empty where it is not.</param>
internal sealed record SegmentRow(Segment Segment, ImmutableArray<CodeOnSegment> Codes, string WhyCovered = "")
{
    /// <summary>Whether nothing of the segment may be seen yet.</summary>
    public bool IsCovered => Codes.IsEmpty;
}

/// <summary>
/// The comparison as far as it may be seen while driving: a segment is uncovered once its reading in the present run is
/// stored, so that no earlier value can pull the next reading towards it.
/// </summary>
internal static class RunningComparison
{
    /// <summary>
    /// Beyond so many passages, far more than any day has, comparing takes longer than a crew may wait for its next segment: such
    /// a study is compared at the stops.
    /// </summary>
    public const int MostPassagesComparedOnTheMove = 5000;

    /// <summary>A row for each segment of the route.</summary>
    /// <param name="study">The study.</param>
    /// <param name="compare">How a day is compared; asked only when something may be seen.</param>
    public static ImmutableArray<SegmentRow> Of(Study study, Func<MeasuredDay, ComparisonTerms, Comparison> compare)
    {
        if (study.Plan is not { } plan)
        {
            return [];
        }

        HashSet<int> open = IsCovered(study, plan) ? [] : [.. (study.LastRun?.Readings ?? []).Select(r => r.Segment)];
        if (open.Count == 0)
        {
            return [.. plan.Route.Select(segment => new SegmentRow(segment, [], WhyCovered(study, plan)))];
        }

        MeasuredDay day = StudyReadings.Of(study);
        Comparison? comparison =
            day.Levels.Select(l => l.Code).Distinct().Count() > 1 ? compare(day, TermsOf(study, study.Asked ?? plan)) : null;
        ILookup<(string, string), MeasuredLevel> clean = day.Levels.Where(l => !l.Spoilt).ToLookup(l => (l.Code, l.Segment));
        SpecCode[] codes = [.. study.Codes.OrderBy(code => code != study.ReferenceCode)];
        return
        [
            .. plan.Route.Select(segment =>
                open.Contains(segment.Number)
                    ? new SegmentRow(segment, [.. codes.Select(code => On(segment, code, clean, comparison))])
                    : new SegmentRow(segment, [], WhyCovered(study, plan))
            ),
        ];
    }

    /// <summary>A covered row for each segment of the route.</summary>
    public static ImmutableArray<SegmentRow> Covered(Study study, string why) =>
        [.. (study.Plan?.Route ?? []).Select(segment => new SegmentRow(segment, [], why))];

    private static bool IsCovered(Study study, Plan plan) => plan.CoveredUntilEvening || IsTooLargeOnTheMove(study);

    private static bool IsTooLargeOnTheMove(Study study) =>
        study.RunOn is not null && study.Runs.Sum(run => run.Passages.Count) > MostPassagesComparedOnTheMove;

    private static string WhyCovered(Study study, Plan plan) =>
        plan.CoveredUntilEvening ? DrivingScreenWords.CoveredUntilEvening
        : IsTooLargeOnTheMove(study) ? DrivingScreenWords.ComparedAtStop
        : DrivingScreenWords.CoveredUntilRead;

    private static ComparisonTerms TermsOf(Study study, Plan plan) =>
        new(study.ReferenceCode?.Digits, plan.MarginDb, plan.ImpactMarginDb, PlanComplete: study.OrderDriven);

    private static CodeOnSegment On(
        Segment segment,
        SpecCode code,
        ILookup<(string, string), MeasuredLevel> allClean,
        Comparison? comparison
    )
    {
        MeasuredLevel[] clean = [.. allClean[(code.Digits, segment.Name)]];
        Estimate? difference = comparison
            ?.Comparisons.FirstOrDefault(c => c.Code == code.Digits)
            ?.Classes.Of(StudyReadings.ClassOf(segment))
            ?.Segments.FirstOrDefault(s => s.Segment == segment.Name)
            ?.Estimate;
        return clean.Length == 0
            ? new CodeOnSegment(code, null, null, null)
            : new CodeOnSegment(code, clean.Min(l => l.LowDb), clean.Max(l => l.HighDb), difference);
    }
}
