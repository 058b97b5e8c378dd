using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>What rules out listening now: it is done at a stop, while the data are open.</summary>
public static class ListeningGate
{
    /// <summary>The objection; null: none.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.ForWriting(study) ?? study switch
        {
            { DataFrozen: true } => new Objection(ListeningWords.DataAreFrozen, JournalWords.AddNoteInstead),
            { RunOn: not null } => new Objection(ListeningWords.RunIsOn, ListeningWords.StopAndParkFirst),
            { Runs.Count: 0 } => new Objection(JournalWords.NothingHasBeenDriven, ListeningWords.DriveFirst),
            _ => null,
        };
    }
}
