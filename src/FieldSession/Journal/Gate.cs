using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>The objections that many facts share.</summary>
public static class Gate
{
    /// <summary>What rules out any fact of a study under way, a note too: no plan, or entries of a newer program; null: nothing.</summary>
    public static Objection? ForWriting(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study switch
        {
            { ReadOnlyBecause: { } because } => new Objection(because, JournalWords.UseNewerProgram),
            { Plan: null } => new Objection(JournalWords.StudyHasNoPlan, JournalWords.MakePlanFirst),
            _ => null,
        };
    }

    /// <summary>What rules out a fact that needs a plan and data that are not frozen; null: nothing.</summary>
    public static Objection? WhileDataAreOpen(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return ForWriting(study)
            ?? study switch
            {
                { Opening: not null } => new Objection(JournalWords.OnlyNotesOnceKeyIsOpen, JournalWords.NoteForm),
                { Predictions.Count: > 0 } => new Objection(JournalWords.PredictionsAreLocked, JournalWords.AddNoteInstead),
                _ => null,
            };
    }

    /// <summary>What rules out a fact that needs a run to be on; null: nothing.</summary>
    public static Objection? WhileARunIsOn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return WhileDataAreOpen(study) ?? (study.RunOn is null ? NoRun(study) : null);
    }

    private static Objection NoRun(Study study) =>
        new(JournalWords.NoRunIsOn, study.CodeAsked is { } asked ? JournalWords.StartRunOnCode(asked, study) : JournalWords.StartRunFirst)
        {
            Cure = study.CodeAsked is null ? null : JournalWords.EnterStartsRun(study),
        };
}
