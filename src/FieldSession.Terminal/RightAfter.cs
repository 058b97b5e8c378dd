using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>
/// One-key acts that mean something only right after another act, because their letters begin words elsewhere. What came
/// right before is read from the study, not remembered by a screen.
/// </summary>
internal static class RightAfter
{
    /// <summary>What rules out the keys that say whose words the note was; null: a note was the last act.</summary>
    public static Objection? ObjectionToSpeaker(Study study) =>
        study.Notes.Count > 0 && LastAct(study)?.Line == study.Notes[^1].Mark.Number
            ? null
            : new Objection(KeysWords.LastActWasNoNote, KeysWords.TypeNoteFirst);

    /// <summary>
    /// What rules out a flag by one key; null: a run is on, or its end or a flag on the same reading was the last act, or the
    /// line is no flag.
    /// </summary>
    public static Objection? ObjectionToFlag(string line, Study study)
    {
        bool isFlag = line.Length == 1 && SpoiltCauses.FromLetter(line[0]) is not null;
        if (!isFlag || study.RunOn is not null || study.LastRun?.LastReading is not { } reading)
        {
            return null;
        }

        bool isFresh = LastAct(study) is { } act && (act.Before.RunOn is not null || act.Flagged == reading.Mark.Name);
        return isFresh
            ? null
            : new Objection(KeysWords.ReadingIsNotFresh, $"type 'flag {study.LastRun.Number}.{reading.Segment} {line}'");
    }

    private static Undoable? LastAct(Study study) => study.Undoables.Count == 0 ? null : study.Undoables[^1];
}
