namespace FieldSession.Comparing;

/// <summary>The comparison of a day step by step: table, views by class, pairs against the reference, counts.</summary>
internal static class DayComparing
{
    /// <summary>Compares.</summary>
    public static Comparison Of(MeasuredDay day, ComparisonTerms terms)
    {
        CheckTerms(terms);
        DayTable table = DayTable.Of(day);
        ClassViews valid = ClassViews.Of(table, terms);
        ClassViews all = valid.WithSpoilt(table, terms);
        IReadOnlyList<CodeReadings> codes = DayCounts.ByCode(day, table);
        int reference = terms.Reference is null ? 0 : Array.IndexOf(table.Codes, terms.Reference);
        ClassFamilies families = ClassFamilies.Of(valid, reference, terms);
        ClassFamilies ofAll = all == valid ? families : ClassFamilies.Of(all, reference, terms);
        return new Comparison
        {
            Reference = terms.Reference ?? table.Codes.FirstOrDefault(),
            MarginDb = terms.MarginDb,
            ImpactMarginDb = terms.ImpactMarginDb,
            Lengthened = terms.Looks?.Lengthened ?? 0,
            Readings = DayCounts.Of(day),
            Codes = codes,
            Comparisons = reference < 0 ? [] : [.. Enumerable.Range(0, table.Codes.Length)
                .Where(code => code != reference)
                .Select(code => Compare(table, (valid, families), (all, ofAll), code, reference, terms))],
            AskedPairs = !terms.AsksAllPairs ? [] : [.. CandidatePairs(table.Codes.Length, reference)
                .Select(pair => Compare(table, (valid, families), (all, ofAll), pair.First, pair.Second, terms))],
            Pairs = [.. valid.Each.SelectMany(view => CodePairs.Of(view, table, terms))],
            Suspicious = [.. SuspiciousReadings.Listed(valid.Steady, table, day)
                .Concat(SuspiciousReadings.Listed(valid.Impact, table, day))
                .OrderBy(reading => reading.PBonferroni)],
            Remarks = [.. reference < 0 ? [ComparingWords.NoRunOnReferenceYet(terms)] : Array.Empty<string>(), .. DayCounts.Remarks(codes)],
        };
    }

    private static IEnumerable<(int First, int Second)> CandidatePairs(int codes, int reference) =>
        from first in Enumerable.Range(0, codes)
        from second in Enumerable.Range(0, codes)
        where first < second && first != reference && second != reference
        select (first, second);

    private static CodeComparison Compare(
        DayTable table,
        (ClassViews Views, ClassFamilies Families) valid,
        (ClassViews Views, ClassFamilies Families) all,
        int code,
        int reference,
        ComparisonTerms terms)
    {
        ClassComparisons counting = valid.Views.Findings(table, valid.Families, code, reference, terms);
        ClassComparisons withSpoilt = all.Views == valid.Views ? counting : all.Views.Findings(table, all.Families, code, reference, terms);
        // before the plan's end nothing is said that a p is behind
        ClassComparison? Remarked(ClassComparison? clean) => terms.PlanComplete ? LeftOutOfTheQuieter.Remarked(clean, table, code, reference, terms) : clean;
        return new CodeComparison(
            table.Codes[code],
            table.Codes[reference],
            new ClassComparisons(Remarked(counting.All), Remarked(counting.Steady), Remarked(counting.Impact)),
            withSpoilt);
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

    /// <summary>Looks at all three, from the readings that count.</summary>
    public static ClassViews Of(DayTable table, ComparisonTerms terms)
    {
        ClassView? all = ClassView.Of(table, table.Valid, null, terms);
        return new ClassViews(all, One(MeasureClass.Steady), One(MeasureClass.Impact));

        ClassView? One(MeasureClass measureClass) => table.IsAll(measureClass)
            ? all?.As(measureClass, terms)
            : ClassView.Of(table, table.Valid, measureClass, terms);
    }

    /// <summary>The same from all readings; a class without a spoilt one stays what it is.</summary>
    public ClassViews WithSpoilt(DayTable table, ComparisonTerms terms)
    {
        ClassView? all = table.HasSpoilt(null) ? ClassView.Of(table, table.All, null, terms) : All;
        return new ClassViews(all, One(MeasureClass.Steady, Steady), One(MeasureClass.Impact, Impact));

        ClassView? One(MeasureClass measureClass, ClassView? clean) =>
            !table.HasSpoilt(measureClass) ? clean
            : table.IsAll(measureClass) ? all?.As(measureClass, terms)
            : ClassView.Of(table, table.All, measureClass, terms);
    }

    /// <summary>What they say about a pair.</summary>
    public ClassComparisons Findings(DayTable table, ClassFamilies families, int code, int reference, ComparisonTerms terms) => HolmOverClasses.Over(new ClassComparisons(
        PairFinding.Of(All, families.All, table, code, reference, terms),
        PairFinding.Of(Steady, families.Steady, table, code, reference, terms),
        PairFinding.Of(Impact, families.Impact, table, code, reference, terms)));
}

/// <summary>What is asked at once in each of the three views.</summary>
/// <param name="All">Of all segments.</param>
/// <param name="Steady">Of steady ones.</param>
/// <param name="Impact">Of impacts.</param>
internal sealed record ClassFamilies(CandidateFamily All, CandidateFamily Steady, CandidateFamily Impact)
{
    /// <summary>The families of the views.</summary>
    public static ClassFamilies Of(ClassViews views, int reference, ComparisonTerms terms) => new(
        CandidateFamily.Of(views.All, reference, terms),
        CandidateFamily.Of(views.Steady, reference, terms),
        CandidateFamily.Of(views.Impact, reference, terms));
}
