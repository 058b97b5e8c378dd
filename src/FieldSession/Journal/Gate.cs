using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>The objections that many facts share.</summary>
public static class Gate
{
    /// <summary>What stands against a fact that needs a plan and data that are not frozen; null: nothing.</summary>
    public static Objection? WhileDataAreOpen(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study switch
        {
            { ReadOnlyBecause: { } because } => new Objection(because, "use a newer program"),
            { Plan: null } => new Objection("the study has no plan", "make it with 'start' first"),
            { Opening: not null } => new Objection("the key is open: only notes can be added", "type '; your words'"),
            { Predictions.Count: > 0 } => new Objection("predictions are locked: the data are frozen", "type '; your words' to add a note"),
            _ => null,
        };
    }

    /// <summary>What stands against a fact that needs a run to be on; null: nothing.</summary>
    public static Objection? WhileARunIsOn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return WhileDataAreOpen(study) ?? (study.RunOn is null ? NoRun(study) : null);
    }

    private static Objection NoRun(Study study) => new(
        "no run is on",
        study.CodeAsked is { } asked ? $"type 'run {asked}' to start run {study.Runs.Count + 1}" : "start one with 'run CODE'");
}
