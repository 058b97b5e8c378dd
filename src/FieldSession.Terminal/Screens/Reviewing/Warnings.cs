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
        .. sight.Comparison.Suspicious.Select(Suspicious),
    ];

    private static IEnumerable<string> OfTheDay(Study study)
    {
        if (!study.OrderDriven)
        {
            yield return $"{study.Runs.Count} of {study.Plan?.Order.Count ?? 0} planned runs are driven: numbers, but no verdict";
        }

        if (RunChecks.AgainstPredicting(study) is { } open)
        {
            yield return $"{open.Why}: {open.Instead}";
        }

        double? voidDb = study.Plan?.Limits.CalibrationDriftVoidDb;
        foreach (Session session in study.Sessions.Where(s => Math.Abs(s.DriftDb ?? 0) > voidDb))
        {
            yield return $"the meter drifted {session.DriftDb:+0.0;-0.0} dB in session {session.Number}: its readings count as spoilt";
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
            yield return $"{place} {study.Plan!.Route[reading.Segment - 1].Name}: {reading.Doubt}; 'confirm {place}' or 'correct {place} 58-60'";
        }

        int late = study.Runs.Sum(run => run.Readings.Count(r => r.Spoilt is { Late: true }));
        if (late > 0)
        {
            yield return $"{late} {(late == 1 ? "reading was" : "readings were")} flagged late: kept in the clean result";
        }
    }

    private static string Suspicious(SuspiciousReading reading) =>
        $"run {reading.Run}, {reading.Segment}: louder than its run and segment let expect; look at its notes, it is no reason by itself to leave it out";
}
