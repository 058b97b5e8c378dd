namespace FieldSession.Comparing;

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
            [.. view.Counted.RunsOut.Where(run => !table.IsReplaced(run))]);
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

    private static string WhyNoPair(ClassView view) => view.Counted switch
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
