using FieldSession.Checking;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>What has to be known before the numbers are looked at.</summary>
internal static class Warnings
{
    /// <summary>The warnings, each in a sentence.</summary>
    public static IEnumerable<string> Of(ReviewSight sight) =>
        [
            .. OfTheDay(sight.Study),
            .. Readings(sight.Study),
            .. sight.Comparison.Remarks,
            .. sight.Comparison.Comparisons.SelectMany(pair => pair.Classes.Of(sight.MainClass)?.Remarks ?? []).Distinct(),
            .. sight.Comparison.Suspicious.Select(ReviewScreenWords.SuspiciousReading),
        ];

    private static IEnumerable<string> OfTheDay(Study study)
    {
        if (!study.OrderDriven)
        {
            yield return ReviewScreenWords.RunsMissing(study);
        }

        if (RunChecks.AgainstPredicting(study) is { } open)
        {
            yield return $"{open.Why}: {open.Instead}";
        }

        double? voidDb = study.Plan?.Limits.CalibrationDriftVoidDb;
        foreach (Session session in study.Sessions.Where(s => Math.Abs(s.DriftDb ?? 0) > voidDb))
        {
            yield return ReviewScreenWords.MeterDrifted(session);
        }

        foreach (Run run in study.Runs.Where(r => r.Doubt is not null))
        {
            yield return $"run {run.Number} on {run.Code}: {run.Doubt}";
        }
    }

    private static IEnumerable<string> Readings(Study study)
    {
        foreach ((Run run, Reading reading) in study.Runs.SelectMany(run => run.Readings.Where(r => r.IsToBeAsked).Select(r => (run, r))))
        {
            string place = $"{run.Number}.{reading.Segment}";
            yield return ReviewScreenWords.ReadingToAsk(place, study.Plan!.Route[reading.Segment - 1].Name, reading);
        }

        int late = study.Runs.Sum(run => run.Readings.Count(r => r.Spoilt is { Late: true }));
        if (late > 0)
        {
            yield return ReviewScreenWords.FlaggedLate(late);
        }
    }
}

/// <summary>What the review page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Day">Its readings.</param>
/// <param name="Comparison">What they say.</param>
/// <param name="Journal">How many lines the journal has, and the hash of the last.</param>
/// <param name="Segment">Number of the chosen segment, from 1.</param>
internal sealed record ReviewSight(Study Study, MeasuredDay Day, Comparison Comparison, (int Lines, string HeadHash) Journal, int Segment)
{
    /// <summary>What the ear says.</summary>
    public required EarFindings Ear { get; init; }

    /// <summary>The plan.</summary>
    public Plan Plan => Study.Asked!;

    /// <summary>The class that the plan's main question is asked of; null: all segments together.</summary>
    public MeasureClass? MainClass =>
        Plan.MainMeasure switch
        {
            MainMeasure.Steady => MeasureClass.Steady,
            MainMeasure.Impact => MeasureClass.Impact,
            _ => null,
        };

    /// <summary>Half width, dB, of the one scale of all plots.</summary>
    public double SpanDb =>
        Look.IntervalPlot.SpanDb(
            Comparison
                .Comparisons.SelectMany(pair => new[] { pair.Classes.Steady, pair.Classes.Impact })
                .OfType<ClassComparison>()
                .SelectMany(one => one.Segments)
                .Select(segment => segment.Estimate),
            Math.Max(Plan.MarginDb, Plan.ImpactMarginDb)
        );

    /// <summary>The margin of a class, dB.</summary>
    public double MarginDb(MeasureClass? measureClass) => measureClass == MeasureClass.Impact ? Plan.ImpactMarginDb : Plan.MarginDb;
}
