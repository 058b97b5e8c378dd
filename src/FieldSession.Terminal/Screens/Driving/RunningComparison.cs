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
internal sealed record SegmentRow(Segment Segment, ImmutableArray<CodeOnSegment> Codes)
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
    /// <summary>A row for each segment of the route.</summary>
    /// <param name="study">The study.</param>
    /// <param name="compare">How a day is compared; asked only when something may be seen.</param>
    public static ImmutableArray<SegmentRow> Of(Study study, Func<MeasuredDay, ComparisonTerms, Comparison> compare)
    {
        if (study.Plan is not { } plan)
        {
            return [];
        }

        HashSet<int> open = plan.CoveredUntilEvening ? [] : [.. (study.LastRun?.Readings ?? []).Select(r => r.Segment)];
        if (open.Count == 0)
        {
            return [.. plan.Route.Select(segment => new SegmentRow(segment, []))];
        }

        MeasuredDay day = StudyReadings.Of(study);
        Comparison? comparison = day.Levels.Select(l => l.Code).Distinct().Count() > 1 ? compare(day, TermsOf(study, plan)) : null;
        SpecCode[] codes = [.. study.Codes.OrderBy(code => code != study.ReferenceCode)];
        return [.. plan.Route.Select(segment => new SegmentRow(
            segment, open.Contains(segment.Number) ? [.. codes.Select(code => On(segment, code, day, comparison))] : []))];
    }

    private static ComparisonTerms TermsOf(Study study, Plan plan) => new(
        study.ReferenceCode?.Digits, plan.MarginDb, plan.ImpactMarginDb, PlanComplete: study.OrderDriven);

    private static CodeOnSegment On(Segment segment, SpecCode code, MeasuredDay day, Comparison? comparison)
    {
        MeasuredLevel[] clean = [.. day.Levels.Where(l => l.Code == code.Digits && l.Segment == segment.Name && !l.Spoilt)];
        Estimate? difference = comparison?.Comparisons
            .FirstOrDefault(c => c.Code == code.Digits)?
            .Classes.Of(StudyReadings.ClassOf(segment))?
            .Segments.FirstOrDefault(s => s.Segment == segment.Name)?
            .Estimate;
        return clean.Length == 0
            ? new CodeOnSegment(code, null, null, null)
            : new CodeOnSegment(code, clean.Min(l => l.LowDb), clean.Max(l => l.HighDb), difference);
    }
}
