using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What this day cannot say, whatever its numbers are.</summary>
public static class LimitsSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        int days = study.Runs.Select(r => r.Started.At.UtcDateTime.Date).Distinct().Count();
        return new ReportSection("Limits",
        [
            new Points(
            [
                $"One set of tyres per spec, {(days == 1 ? "one day" : $"{days} days")}, one route, one meter position, the inside of this car only: the difference between two sets of one spec is not known and does not shrink with more runs.",
                "Absolute levels do not travel to other cars, meters or days; only the paired differences of the day are compared.",
                "dB(A) is one axis, the ear another: a ring or a whine can be plain to the ear and hardly move the meter.",
                $"{study.Runs.Count} runs of {study.Plan?.Order.Count ?? 0} planned were driven.",
            ]),
        ]);
    }
}
