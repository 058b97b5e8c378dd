using FieldSession.Statistics;

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
            Comparisons =
                reference < 0
                    ? []
                    :
                    [
                        .. Enumerable
                            .Range(0, table.Codes.Length)
                            .Where(code => code != reference)
                            .Select(code => Compare(table, (valid, families), (all, ofAll), code, reference, terms)),
                    ],
            AskedPairs = !terms.AsksAllPairs
                ? []
                :
                [
                    .. CandidatePairs(table.Codes.Length, reference)
                        .Select(pair => Compare(table, (valid, families), (all, ofAll), pair.First, pair.Second, terms)),
                ],
            Pairs = [.. valid.Each.SelectMany(view => CodePairs.Of(view, table, terms))],
            Suspicious =
            [
                .. SuspiciousReadings
                    .Listed(valid.Steady, table, day)
                    .Concat(SuspiciousReadings.Listed(valid.Impact, table, day))
                    .OrderBy(reading => reading.PBonferroni),
            ],
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
        ComparisonTerms terms
    )
    {
        ClassComparisons counting = valid.Views.Findings(table, valid.Families, code, reference, terms);
        ClassComparisons withSpoilt = all.Views == valid.Views ? counting : all.Views.Findings(table, all.Families, code, reference, terms);
        // before the plan's end nothing is said that a p is behind
        ClassComparison? Remarked(ClassComparison? clean) =>
            terms.PlanComplete ? LeftOutOfTheQuieter.Remarked(clean, table, code, reference, terms) : clean;
        return new CodeComparison(
            table.Codes[code],
            table.Codes[reference],
            new ClassComparisons(Remarked(counting.All), Remarked(counting.Steady), Remarked(counting.Impact)),
            withSpoilt
        );
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

        ClassView? One(MeasureClass measureClass) =>
            table.IsAll(measureClass) ? all?.As(measureClass, terms) : ClassView.Of(table, table.Valid, measureClass, terms);
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
    public ClassComparisons Findings(DayTable table, ClassFamilies families, int code, int reference, ComparisonTerms terms) =>
        HolmOverClasses.Over(
            new ClassComparisons(
                PairFinding.Of(All, families.All, table, code, reference, terms),
                PairFinding.Of(Steady, families.Steady, table, code, reference, terms),
                PairFinding.Of(Impact, families.Impact, table, code, reference, terms)
            )
        );
}

/// <summary>What is asked at once in each of the three views.</summary>
/// <param name="All">Of all segments.</param>
/// <param name="Steady">Of steady ones.</param>
/// <param name="Impact">Of impacts.</param>
internal sealed record ClassFamilies(CandidateFamily All, CandidateFamily Steady, CandidateFamily Impact)
{
    /// <summary>The families of the views.</summary>
    public static ClassFamilies Of(ClassViews views, int reference, ComparisonTerms terms) =>
        new(
            CandidateFamily.Of(views.All, reference, terms),
            CandidateFamily.Of(views.Steady, reference, terms),
            CandidateFamily.Of(views.Impact, reference, terms)
        );
}

/// <summary>
/// Puts the Holm-corrected p beside every segment of a pair: one family over both classes, because the question "which segments differ" is
/// asked once (<see cref="Holm"/>).
/// </summary>
internal static class HolmOverClasses
{
    /// <summary>The classes with their corrected p.</summary>
    public static ClassComparisons Over(ClassComparisons classes)
    {
        SegmentEstimate[] family = [.. Of(classes.Steady), .. Of(classes.Impact)];
        double[] adjusted = Holm.Adjust([
            .. family.Where(segment => segment.Estimate.P is not null).Select(segment => segment.Estimate.P!.Value),
        ]);
        int next = 0;
        ClassComparison? With(ClassComparison? comparison) =>
            comparison is null
                ? null
                : comparison with
                {
                    Segments =
                    [
                        .. comparison.Segments.Select(segment =>
                            segment.Estimate.P is null ? segment : segment with { PHolm = adjusted[next++] }
                        ),
                    ],
                };
        return classes with { Steady = With(classes.Steady), Impact = With(classes.Impact) };
    }

    private static IReadOnlyList<SegmentEstimate> Of(ClassComparison? comparison) => comparison?.Segments ?? [];
}

/// <summary>
/// Traffic and its like only raise levels. If a difference is shown only because readings of the quieter code were left out, that has to be
/// said:
/// put back the quieter code's spoilt readings alone, and look whether the difference is still there.
/// </summary>
internal static class LeftOutOfTheQuieter
{
    /// <summary>The comparison, with a remark in front where the difference hangs on what was left out of the quieter code.</summary>
    public static ClassComparison? Remarked(ClassComparison? clean, DayTable table, int code, int reference, ComparisonTerms terms)
    {
        if (clean is not { Overall.DifferenceDb: double difference, Basis.PDifference: double p } || p >= terms.Levels.Difference)
        {
            return clean;
        }

        int quieter = difference < 0 ? code : reference;
        if (PutBack(table, clean.Class, quieter) is not double[] cells)
        {
            return clean;
        }

        ClassView? view = ClassView.Of(table, cells, clean.Class, terms);
        PairLine? pair = PairLine.Of(view, code, reference, terms);
        bool stands =
            pair is not null
            && CandidateFamily.Of(view, reference, terms).POf(pair).Difference < terms.Levels.Difference
            && Math.Sign(pair.Overall.DifferenceDb) == Math.Sign(difference);
        return stands ? clean : clean with { Remarks = [Words(table.Codes[quieter]), .. clean.Remarks] };
    }

    private static string Words(string quieter) => ComparingWords.DifferenceHangsOnReadingsLeftOut(quieter);

    /// <summary>The valid levels, but the code's own spoilt ones put back; null: it has none in the class.</summary>
    private static double[]? PutBack(DayTable table, MeasureClass? measureClass, int code)
    {
        double[]? cells = null;
        int[] segments = table.SegmentsOf(measureClass);
        for (int run = 0; run < table.Runs.Length; run++)
        {
            foreach (int segment in table.Runs[run].Code == code ? segments : [])
            {
                int at = run * table.Segments.Length + segment;
                if (!table.Valid[at].Equals(table.All[at]))
                {
                    cells ??= [.. table.Valid];
                    cells[at] = table.All[at];
                }
            }
        }

        return cells;
    }
}
