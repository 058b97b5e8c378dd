namespace FieldSession.Comparing;

/// <summary>Answers the main question from the main segments alone, by the method that holds for the day: as if nothing else had been read.</summary>
internal static class MainSegmentsCompared
{
    /// <summary>The comparison with what the main segments say; unchanged where the plan names none.</summary>
    /// <param name="whole">The comparison of the whole day.</param>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive, main segments.</param>
    /// <param name="compare">How a day is compared.</param>
    public static Comparison AddedTo(Comparison whole, MeasuredDay day, ComparisonTerms terms, Func<MeasuredDay, ComparisonTerms, Comparison> compare)
    {
        if (terms.MainSegments is not { } names)
        {
            return whole;
        }

        Comparison main = compare(OnlyOn(day, [.. names]), terms with { Reference = whole.Reference, MainSegments = null });
        return whole with { MainSegments = names, OnMainSegments = main.Comparisons, AskedPairsOnMainSegments = main.AskedPairs, PairsOnMainSegments = main.Pairs };
    }

    /// <summary>The day as if nothing else had been read; what was missed is counted for the whole day only, and told there.</summary>
    public static MeasuredDay OnlyOn(MeasuredDay day, HashSet<string> names) => new(
        [.. day.Levels.Where(level => names.Contains(level.Segment))],
        Planned: day.Planned is { } planned ? [.. planned.Where(segment => names.Contains(segment.Segment))] : null);
}
