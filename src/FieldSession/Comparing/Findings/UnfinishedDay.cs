namespace FieldSession.Comparing;

/// <summary>
/// Before the plan's end no p is known to anybody, nor what hangs on it: whoever sees one decides by it whether to go on. Intervals stay,
/// marked as unfinished.
/// </summary>
internal static class UnfinishedDay
{
    /// <summary>The comparison without any p.</summary>
    public static Comparison Of(Comparison comparison) =>
        comparison with
        {
            IsUnfinished = true,
            Comparisons = [.. comparison.Comparisons.Select(Of)],
            AskedPairs = [.. comparison.AskedPairs.Select(Of)],
            Pairs = [.. comparison.Pairs.Select(pair => pair with { Overall = Of(pair.Overall), PHolm = null })],
        };

    private static CodeComparison Of(CodeComparison pair) => pair with { Classes = Of(pair.Classes), WithSpoilt = Of(pair.WithSpoilt) };

    private static ClassComparisons Of(ClassComparisons classes) => new(Of(classes.All), Of(classes.Steady), Of(classes.Impact));

    private static ClassComparison? Of(ClassComparison? one) =>
        one is null
            ? null
            : one with
            {
                IsUnfinished = true,
                Overall = one.Overall is { } overall ? Of(overall) : null,
                Basis = null,
                MoreRuns = null,
                MoreRunsAsSeen = null,
                MoreRunsCautious = null,
                Interaction = null,
                OrderTest = null,
                Assumed = one.Assumed is { } assumed ? Of(assumed) : null,
                RouteEnergy = one.RouteEnergy is { } energy ? energy with { Overall = Of(energy.Overall) } : null,
                Kinds = [.. one.Kinds.Select(kind => kind with { Estimate = Of(kind.Estimate) })],
                Segments = [.. one.Segments.Select(segment => segment with { Estimate = Of(segment.Estimate), PHolm = null })],
                Sensitivity = one.Sensitivity is { } sensitivity
                    ? sensitivity with
                    {
                        Lines = [.. sensitivity.Lines.Select(line => line with { Overall = Of(line.Overall) })],
                    }
                    : null,
            };

    private static Estimate Of(Estimate estimate) => estimate with { P = null, PTost = null };
}

/// <summary>
/// The words of the main question alone, by the same rules as <see cref="Comparison"/> and without anything that is said beside them: for
/// who asks thousands of times.
/// </summary>
public static class MainConclusions
{
    /// <summary>What every candidate shows against the reference; null beside its code: the runs carry no verdict.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive, main measure and segments; without a main measure the steady segments are
    /// asked.</param>
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
            .. Enumerable
                .Range(0, table.Codes.Length)
                .Where(code => code != reference)
                .Select(code =>
                    PairLine.Of(view, code, reference, terms) is { } pair
                        ? new MainConclusion(
                            table.Codes[code],
                            VerdictWords.ConclusionOf(pair, family, terms),
                            VerdictWords.IsLarger(pair, family, terms),
                            pair.Overall
                        )
                        : new MainConclusion(table.Codes[code], null, IsLarger: false, null)
                ),
        ];
    }
}

/// <summary>What one candidate shows against the reference.</summary>
/// <param name="Code">The candidate.</param>
/// <param name="Conclusion">What its word rests on; null: the runs carry no verdict.</param>
/// <param name="IsLarger">Whether the word says that the difference is larger than the margin.</param>
/// <param name="Overall">The difference; null: nothing to compare.</param>
public sealed record MainConclusion(string Code, Conclusion? Conclusion, bool IsLarger, Estimate? Overall);

/// <summary>
/// Answers the main question from the main segments alone, by the method that holds for the day: as if nothing else had been read.
/// </summary>
internal static class MainSegmentsCompared
{
    /// <summary>The comparison with what the main segments say; unchanged where the plan names none.</summary>
    /// <param name="whole">The comparison of the whole day.</param>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive, main segments.</param>
    /// <param name="compare">How a day is compared.</param>
    public static Comparison AddedTo(
        Comparison whole,
        MeasuredDay day,
        ComparisonTerms terms,
        Func<MeasuredDay, ComparisonTerms, Comparison> compare
    )
    {
        if (terms.MainSegments is not { } names)
        {
            return whole;
        }

        Comparison main = compare(OnlyOn(day, [.. names]), terms with { Reference = whole.Reference, MainSegments = null });
        return whole with
        {
            MainSegments = names,
            OnMainSegments = main.Comparisons,
            AskedPairsOnMainSegments = main.AskedPairs,
            PairsOnMainSegments = main.Pairs,
        };
    }

    /// <summary>The day as if nothing else had been read; what was missed is counted for the whole day only, and told there.</summary>
    public static MeasuredDay OnlyOn(MeasuredDay day, HashSet<string> names) =>
        new(
            [.. day.Levels.Where(level => names.Contains(level.Segment))],
            Planned: day.Planned is { } planned ? [.. planned.Where(segment => names.Contains(segment.Segment))] : null
        );
}
