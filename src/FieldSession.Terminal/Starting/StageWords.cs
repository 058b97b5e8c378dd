using FieldSession.State;

namespace FieldSession.Terminal.Starting;

/// <summary>How far a study has come, in words and without opening it for writing.</summary>
internal static class StageWords
{
    /// <summary>The words for a study.</summary>
    public static string Of(Study study)
    {
        string name = study.Plan?.StudyName ?? "study";
        int planned = study.Plan?.Order.Count ?? 0;
        return study switch
        {
            { Opening: not null } => $"{name}: the key is open; next: the report",
            { Stage: Stage.Predicted } => $"{name}: predictions locked; next: open the key",
            { OrderDriven: true, Runs.Count: > 0 } => $"{name}: all {planned} runs driven; next: review and predictions",
            { RunOn: { } run } => $"{name}: run {run.Number} of {planned} is on",
            { Runs.Count: > 0 } => $"{name}: {study.Runs.Count - Aborts.CountIn(study)} of {planned} runs driven",
            { Fittings.Count: > 0 } => $"{name}: sealed; next: calibration and run 1",
            { Plan: not null } => $"{name}: planned; next: the custodian seals it",
            _ => "empty",
        };
    }
}
