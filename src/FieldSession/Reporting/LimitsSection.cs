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
        return new ReportSection(ReportPart.Limits, "Limits",
        [
            new Points(
            [
                ReportingWords.OneSetOfTyresPerSpec(days == 1 ? "one day" : $"{days} days"),
                ReportingWords.AbsoluteLevelsDoNotTravel,
                ReportingWords.MeterAndEarDiffer,
                ReportingWords.RunsDrivenOfPlanned(study),
            ]),
        ]);
    }
}
