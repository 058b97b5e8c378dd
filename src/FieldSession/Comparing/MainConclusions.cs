namespace FieldSession.Comparing;

/// <summary>
/// The words of the main question alone, by the same rules as <see cref="Comparison"/> and without anything that is said beside them: for who asks
/// thousands of times.
/// </summary>
public static class MainConclusions
{
    /// <summary>What every candidate shows against the reference; null beside its code: the runs carry no verdict.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive, main measure and segments; without a main measure the steady segments are asked.</param>
    /// <exception cref="ArgumentException">As for <see cref="BlindComparison.Of"/>.</exception>
    public static IReadOnlyList<MainConclusion> Of(MeasuredDay day, ComparisonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(terms);
        DayTable table = DayTable.Of(terms.MainSegments is { } names ? MainSegmentsCompared.OnlyOn(day, [.. names]) : day);
        int reference = terms.Reference is null ? 0 : Array.IndexOf(table.Codes, terms.Reference);
        MeasureClass? measureClass = ComparisonTerms.MainClassOf(terms.MainMeasure ?? State.MainMeasure.Steady);
        ClassView? view = reference < 0 ? null : ClassView.Of(table, table.Valid, measureClass, terms);
        CandidateFamily family = CandidateFamily.Of(view, reference, terms);
        return
        [
            .. Enumerable.Range(0, table.Codes.Length)
                .Where(code => code != reference)
                .Select(code => PairLine.Of(view, code, reference, terms) is { } pair
                    ? new MainConclusion(table.Codes[code], VerdictWords.ConclusionOf(pair, family, terms), VerdictWords.IsLarger(pair, family, terms), pair.Overall)
                    : new MainConclusion(table.Codes[code], null, IsLarger: false, null)),
        ];
    }
}

/// <summary>What one candidate shows against the reference.</summary>
/// <param name="Code">The candidate.</param>
/// <param name="Conclusion">What its word rests on; null: the runs carry no verdict.</param>
/// <param name="IsLarger">Whether the word says that the difference is larger than the margin.</param>
/// <param name="Overall">The difference; null: nothing to compare.</param>
public sealed record MainConclusion(string Code, Conclusion? Conclusion, bool IsLarger, Estimate? Overall);
