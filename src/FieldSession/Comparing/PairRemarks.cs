namespace FieldSession.Comparing;

/// <summary>What a reader has to know beside the numbers of one pair and class, in plain words.</summary>
internal static class PairRemarks
{
    private const double NoLever = 1e-6;

    /// <summary>The remarks, most important first.</summary>
    public static IReadOnlyList<string> Of(ClassView view, PairLine? pair, DayTable table)
    {
        List<string> remarks = pair is null ? [WhyNoPair(view)] : [.. OfModel(pair), .. OfOrder(pair, table)];
        if (view.Counted.RunsOut.Length > 0)
        {
            remarks.Add($"not counted, because too few of their segments have a valid level: run {string.Join(", ", view.Counted.RunsOut)}");
        }

        if (view.Counted.SegmentsOut.Length > 0)
        {
            remarks.Add($"not compared, because not every code has a valid level there: {string.Join(", ", view.Counted.SegmentsOut)}");
        }

        return remarks;
    }

    private static string WhyNoPair(ClassView view) => view.Counted switch
    {
        { Codes.Length: 0 } => "no run has valid levels on half of these segments",
        { Segments.Length: 0 } => "no segment has a valid level on every code",
        _ => "fewer than two codes to compare: levels only",
    };

    private static IEnumerable<string> OfModel(PairLine pair)
    {
        Scatter scatter = pair.Model.Scatter;
        (bool Holds, string Words)[] all =
        [
            (pair.ConfoundedWith is not null, $"code and {pair.ConfoundedWith} cannot be told apart: the difference may be either"),
            (pair.Model.Runs.Length == pair.Model.Counted.Codes.Length, "not bracketed: no code was driven twice"),
            (scatter is { NuRun: 1, PriorUsed: false }, "one comparison of like with like only: the interval is as wide as that makes it"),
            (scatter.RougherThanArchive, "today is rougher than the archive: the archive's repeatability is not used"),
            (scatter.PriorUsed, $"with repeatability from {scatter.Prior?.Days} earlier days: it holds if today repeats as they did"),
            (scatter.FloorApplied, "the runs agree better than the readings allow: the error is raised to what the readings allow"),
            (pair.Overall.StandardErrorDb == 0, "no scatter seen at this display resolution: no interval"),
            (pair.Model.Design.Parallel, "runs side by side are compared within their slot"),
            (pair.Model.Design.DriftColumn is not null, "a straight drift over the day is taken out"),
        ];
        return all.Where(remark => remark.Holds).Select(remark => remark.Words);
    }

    private static IEnumerable<string> OfOrder(PairLine pair, DayTable table)
    {
        if (!table.TimesKnown)
        {
            yield return "no times: runs count as equally spaced, no drift per hour";
        }

        if (pair.Model.Design.Parallel || pair.Model.Design.DriftColumn is not null || pair.Model.Runs.Length == 2)
        {
            yield break;
        }

        if (IsOneAfterTheOther(pair))
        {
            yield return "one code was driven after the other: a drift of the day shows in full as a difference";
        }
        else if (table.TimesKnown && Math.Abs(DriftFinding.OrderLeverHours(pair)) is > NoLever and double lever)
        {
            yield return $"a real drift of 1 dB per hour would shift the difference by {lever:0.00} dB";
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
