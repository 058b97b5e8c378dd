using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>Everything one class says about one pair, put together.</summary>
internal static class PairFinding
{
    private const double Power = 0.80;
    private const double UsualLevel = 0.05;

    /// <summary>The finding; null if the route has no segment of the class.</summary>
    public static ClassComparison? Of(
        ClassView? view,
        CandidateFamily family,
        DayTable table,
        int code,
        int reference,
        ComparisonTerms terms
    )
    {
        if (view is null)
        {
            return null;
        }

        PairLine? pair = PairLine.Of(view, code, reference, terms);
        ClassComparison counts = new()
        {
            Class = view.Class,
            IsExplored = terms.IsExplored(view.Class),
            RunsCounted = view.Counted.RunCount,
            SegmentsCompared = view.Counted.Segments.Length,
            RunsNotCounted = view.Counted.RunsOut,
            SegmentsNotCompared = view.Counted.SegmentsOut,
            Remarks = PairRemarks.Of(view, pair, table),
            Verdict = pair is null ? VerdictWords.NoComparison : VerdictWords.Of(pair, family, terms),
            Conclusion = pair is null ? null : VerdictWords.ConclusionOf(pair, family, terms),
        };
        return pair is null
            ? counts
            : WithWord(WithSegments(WithDay(WithScatter(counts, pair), pair, table), pair, table), pair, family, terms);
    }

    private static ClassComparison WithWord(ClassComparison comparison, PairLine pair, CandidateFamily family, ComparisonTerms terms)
    {
        WordLevels alone = family.LevelsOf(pair);
        bool isSettled = Conclusion.Of(pair, family, terms) is { ShowsDifference: true } or { ShowsEquivalence: true };

        // what a family takes off a level today it takes off after more runs too
        WordLevels Ahead(int more)
        {
            WordLevels later = terms.LevelsAfter(more * family.Codes);
            return new WordLevels(
                later.Difference * alone.Difference / terms.Levels.Difference,
                later.Equivalence * alone.Equivalence / terms.Levels.Equivalence
            );
        }

        WordLevels Levels(int more) => more == 0 ? alone : Ahead(more);
        MoreRuns? plain = MoreRuns.OfPlainDesign(pair, Levels, isSettled);
        return comparison with
        {
            Basis = WordBasis.Of(pair, family, terms),
            CouldShow = CouldShow.Of(pair.Overall, alone.Difference),
            MoreRuns = isSettled ? null : MoreRuns.Of(pair, Levels),
            MoreRunsAsSeen = plain?.AsSeen,
            MoreRunsCautious = plain?.Cautious,
        };
    }

    private static ClassComparison WithScatter(ClassComparison comparison, PairLine pair)
    {
        Scatter scatter = pair.Model.Scatter;
        return comparison with
        {
            DriftInModel = pair.Model.Design.DriftColumn is not null,
            SRunDb = Root(scatter.RunVariance),
            NuRun = scatter.NuRun,
            SEDb = Root(scatter.ReadingVariance),
            NuE = scatter.NuE,
            Kbar = scatter.Kbar,
            SigmaRunEffectDb = Root(scatter.RunVariance - scatter.Kbar * scatter.ReadingVariance),
            FloorApplied = scatter.FloorApplied,
            PriorUsed = scatter.PriorUsed,
            Prior = scatter.Prior,
            SRunUsedDb = Root(scatter.RunVarianceUsed),
        };
    }

    private static ClassComparison WithDay(ClassComparison comparison, PairLine pair, DayTable table) =>
        comparison with
        {
            Overall = pair.Overall,
            Mdd80Db = pair.Overall is { Df: double df, StandardErrorDb: double standardError }
                ? NoncentralT.NoncentralityForPower(Power, df, UsualLevel) * standardError
                : null,
            Drift = table.TimesKnown ? DriftFinding.Of(pair.Model) : null,
            OrderTest = OrderTest.Of(pair),
            Assumed = AssumedRepeatability.Of(pair, comparison.Class),
            RouteEnergy = comparison.Class == MeasureClass.Steady ? RouteEnergyFinding.Of(pair, table) : null,
            OrderLeverHours = table.TimesKnown ? DriftFinding.OrderLeverHours(pair) : null,
        };

    private static ClassComparison WithSegments(ClassComparison comparison, PairLine pair, DayTable table)
    {
        if (comparison.Class is null)
        {
            return comparison;
        }

        PlannedSegment[] segments = [.. pair.Model.Counted.Segments.Select(s => table.Segments[s])];
        Estimate Line(params int[] columns) => pair.Model.Line(pair.Contrast, columns, pair.MarginDb);
        return comparison with
        {
            Interaction = InteractionFinding.Of(pair, table),
            Kinds =
            [
                .. pair
                    .Model.AllColumns.GroupBy(column => segments[column].Kind)
                    .Select(kind => new KindEstimate(kind.Key, kind.Count(), Line([.. kind]))),
            ],
            Segments = [.. segments.Select((segment, column) => new SegmentEstimate(segment.Segment, segment.Kind, Line(column), null))],
        };
    }

    private static double? Root(double? variance) => variance is double v ? Math.Sqrt(Math.Max(0, v)) : null;
}

/// <summary>What a reader has to know beside the numbers of one pair and class, in plain words.</summary>
internal static class PairRemarks
{
    private const double NoLever = 1e-6;

    /// <summary>The remarks, most important first.</summary>
    public static IReadOnlyList<string> Of(ClassView view, PairLine? pair, DayTable table)
    {
        List<string> remarks = pair is null ? [WhyNoPair(view)] : [.. OfModel(pair), .. OfOrder(pair, table)];
        (int[] replaced, int[] thin) = (
            [.. view.Counted.RunsOut.Where(table.IsReplaced)],
            [.. view.Counted.RunsOut.Where(run => !table.IsReplaced(run))]
        );
        if (replaced.Length > 0)
        {
            remarks.Add(ComparingWords.RunsReplaced(string.Join(", ", replaced)));
        }

        if (thin.Length > 0)
        {
            remarks.Add(ComparingWords.RunsNotCounted(string.Join(", ", thin)));
        }

        if (view.Counted.SegmentsOut.Length > 0)
        {
            remarks.Add(ComparingWords.SegmentsNotCompared(string.Join(", ", view.Counted.SegmentsOut)));
        }

        return remarks;
    }

    private static string WhyNoPair(ClassView view) =>
        view.Counted switch
        {
            { Codes.Length: 0 } => ComparingWords.NoRunReadOnEnoughSegments,
            { Segments.Length: 0 } => ComparingWords.NoSegmentReadOnEveryCode,
            _ => ComparingWords.FewerThanTwoCodesToCompare,
        };

    private static IEnumerable<string> OfModel(PairLine pair)
    {
        Scatter scatter = pair.Model.Scatter;
        (bool Holds, string Words)[] all =
        [
            (pair.ConfoundedWith is not null, ComparingWords.CodeNotToldApart(pair)),
            (pair.Model.Runs.Length == pair.Model.Counted.Codes.Length, ComparingWords.NotBracketed),
            (scatter is { NuRun: 1, PriorUsed: false }, ComparingWords.OneComparisonOfLikeOnly),
            (scatter.RougherThanArchive, ComparingWords.TodayIsRougherThanArchive),
            (scatter.PriorUsed, ComparingWords.RepeatabilityFromEarlierDays(scatter)),
            (scatter.FloorApplied, ComparingWords.RunsAgreeBetterThanReadingsAllow),
            (pair.Overall.StandardErrorDb == 0, ConclusionWords.NoScatterNoInterval),
            (pair.Model.Design.Parallel, ComparingWords.SideBySideComparedWithinSlot),
            (pair.Model.Design.DriftColumn is not null, ComparingWords.StraightDriftIsTakenOut),
        ];
        return all.Where(remark => remark.Holds).Select(remark => remark.Words);
    }

    private static IEnumerable<string> OfOrder(PairLine pair, DayTable table)
    {
        if (!table.TimesKnown)
        {
            yield return ComparingWords.NoTimesKnown;
        }

        if (pair.Model.Design.Parallel || pair.Model.Design.DriftColumn is not null || pair.Model.Runs.Length == 2)
        {
            yield break;
        }

        if (IsOneAfterTheOther(pair))
        {
            yield return ComparingWords.OneCodeAfterTheOther;
        }
        else if (table.TimesKnown && Math.Abs(DriftFinding.OrderLeverHours(pair)) is > NoLever and double lever)
        {
            yield return ComparingWords.DriftWouldShiftDifference(lever);
        }
    }

    private static bool IsOneAfterTheOther(PairLine pair)
    {
        double[] Times(int place) =>
            [.. pair.Model.Runs.Where(run => run.Code == pair.Model.Counted.Codes[place]).Select(run => run.Hours)];
        (double[] first, double[] second) = (Times(pair.First), Times(pair.Second));
        return first.Max() < second.Min() || second.Max() < first.Min();
    }
}
