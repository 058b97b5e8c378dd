namespace FieldSession.Comparing;

/// <summary>The comparison of a day step by step: table, views by class, pairs against the reference, counts.</summary>
internal static class DayComparing
{
    /// <summary>Compares.</summary>
    public static Comparison Of(MeasuredDay day, ComparisonTerms terms)
    {
        CheckTerms(terms);
        DayTable table = DayTable.Of(day);
        ClassViews valid = ClassViews.Of(table, table.Valid, terms);
        ClassViews all = day.Levels.Any(level => level.Spoilt) ? ClassViews.Of(table, table.All, terms) : valid;
        IReadOnlyList<CodeReadings> codes = DayCounts.ByCode(day, table);
        int reference = terms.Reference is null ? 0 : Array.IndexOf(table.Codes, terms.Reference);
        return new Comparison
        {
            Reference = terms.Reference ?? table.Codes.FirstOrDefault(),
            MarginDb = terms.MarginDb,
            ImpactMarginDb = terms.ImpactMarginDb,
            Readings = DayCounts.Of(day),
            Codes = codes,
            Comparisons = reference < 0 ? [] : [.. Enumerable.Range(0, table.Codes.Length)
                .Where(code => code != reference)
                .Select(code => Compare(table, valid, all, code, reference, terms))],
            Pairs = [.. valid.Each.SelectMany(view => CodePairs.Of(view, table, terms))],
            Suspicious = [.. SuspiciousReadings.Ranked(valid.Steady, table)
                .Concat(SuspiciousReadings.Ranked(valid.Impact, table))
                .Where(reading => reading.PBonferroni < SuspiciousReadings.Level)
                .OrderBy(reading => reading.PBonferroni)],
            Remarks = [.. reference < 0 ? [$"no run on the reference {terms.Reference} yet"] : Array.Empty<string>(), .. DayCounts.Remarks(codes)],
        };
    }

    private static CodeComparison Compare(
        DayTable table, ClassViews valid, ClassViews all, int code, int reference, ComparisonTerms terms)
    {
        ClassComparisons counting = valid.Findings(table, code, reference, terms);
        ClassComparisons withSpoilt = ReferenceEquals(all, valid) ? counting : all.Findings(table, code, reference, terms);
        return new CodeComparison(table.Codes[code], table.Codes[reference], counting, withSpoilt);
    }

    private static void CheckTerms(ComparisonTerms terms)
    {
        if (!(terms.MarginDb > 0 && terms.ImpactMarginDb > 0))
        {
            throw new ArgumentException("a margin has to be above 0 dB");
        }
    }
}

/// <summary>The three views of one choice of readings.</summary>
/// <param name="All">All segments.</param>
/// <param name="Steady">Steady ones.</param>
/// <param name="Impact">Impacts.</param>
internal sealed record ClassViews(ClassView? All, ClassView? Steady, ClassView? Impact)
{
    /// <summary>The three in a row.</summary>
    public ClassView?[] Each => [All, Steady, Impact];

    /// <summary>Looks at all three.</summary>
    public static ClassViews Of(DayTable table, double[] cells, ComparisonTerms terms) => new(
        ClassView.Of(table, cells, null, terms),
        ClassView.Of(table, cells, MeasureClass.Steady, terms),
        ClassView.Of(table, cells, MeasureClass.Impact, terms));

    /// <summary>What they say about a pair.</summary>
    public ClassComparisons Findings(DayTable table, int code, int reference, ComparisonTerms terms) => HolmOverClasses.Over(new ClassComparisons(
        PairFinding.Of(All, table, code, reference, terms),
        PairFinding.Of(Steady, table, code, reference, terms),
        PairFinding.Of(Impact, table, code, reference, terms)));
}
