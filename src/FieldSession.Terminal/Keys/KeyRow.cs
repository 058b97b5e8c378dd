using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using Terminal.Gui.Input;

namespace FieldSession.Terminal;

/// <summary>What a key does beside writing a line.</summary>
internal enum KeyDeed
{
    /// <summary>Writes the row's line at once.</summary>
    Write,

    /// <summary>Writes what is in the box; on an empty box between runs, starts the next run.</summary>
    Commit,

    /// <summary>Empties the box.</summary>
    Clear,

    /// <summary>Brings the line back that was not stored.</summary>
    Recall,

    /// <summary>Completes the word begun in the box.</summary>
    Complete,

    /// <summary>Begins a note in the box.</summary>
    Note,

    /// <summary>Right after a note, writes whose words it was.</summary>
    Speaker,

    /// <summary>Begins words in the box.</summary>
    Words,

    /// <summary>Changes the plan sheet, or moves on it; the row's line says how.</summary>
    Plan,

    /// <summary>Moves through the fields of a form; the last one writes.</summary>
    Field,

    /// <summary>Shows or hides the help.</summary>
    Help,

    /// <summary>Brings the next look: day, night, plain.</summary>
    Look,

    /// <summary>Takes what is in the box as the answer that a screen of the evening waits for.</summary>
    Answer,

    /// <summary>Goes back a step.</summary>
    Back,

    /// <summary>Scrolls up by a row.</summary>
    Up,

    /// <summary>Scrolls down by a row.</summary>
    Down,

    /// <summary>Scrolls up by a page.</summary>
    PageUp,

    /// <summary>Scrolls down by a page.</summary>
    PageDown,

    /// <summary>Scrolls to the first row.</summary>
    Top,

    /// <summary>Scrolls to the last row.</summary>
    Bottom,

    /// <summary>Chooses the one before.</summary>
    Previous,

    /// <summary>Chooses the one after.</summary>
    Next,

    /// <summary>Confirms the chosen one.</summary>
    Confirm,

    /// <summary>Moves the chosen one and all after it a step on.</summary>
    ShiftOn,

    /// <summary>Moves the chosen one and all after it a step back.</summary>
    ShiftBack,

    /// <summary>Goes to what is due at the stop: marks the next doubt, or begins what is to be typed.</summary>
    Due,

    /// <summary>Takes the last act back.</summary>
    Undo,

    /// <summary>Writes a file.</summary>
    Save,

    /// <summary>Covers the running comparison, or uncovers it.</summary>
    Cover,

    /// <summary>Shows another screen.</summary>
    Screen,

    /// <summary>Leaves the program.</summary>
    Leave,
}

/// <summary>A key is a row of data: footer, help screen and docs/keys.md are printed from it.</summary>
/// <param name="Where">The screen on which it works; empty: on all.</param>
/// <param name="Keys">The keys, each of which does it: a character, or a name such as F1 or Alt+H.</param>
/// <param name="Label">Its word in the footer; rows with the same word share one place there. Empty: not in the footer.</param>
/// <param name="Words">What it does.</param>
/// <param name="Deed">What it does, for the program.</param>
/// <param name="Line">The entry line it writes, where it writes one; for a screen its name.</param>
internal sealed record KeyRow(string Where, ImmutableArray<string> Keys, string Label, string Words, KeyDeed Deed, string Line = "")
{
    /// <summary>Why the key is barred in the study as it is now; null: it works.</summary>
    public Objection? ObjectionIn(Study study) =>
        Deed switch
        {
            KeyDeed.Write => RightAfter.ObjectionToFlag(Line, study) ?? ObjectionTo(Line, study),
            KeyDeed.Speaker => RightAfter.ObjectionToSpeaker(study) ?? ObjectionTo(Line, study),
            KeyDeed.Field => Gate.WhileDataAreOpen(study)
                ?? (study.RunOn is { } run ? new Objection(KeysWords.RunStillOn(run), KeysWords.EndRunFirst) : null),
            KeyDeed.Commit when study.RunOn is null && study.CodeAsked is { } code => ObjectionTo($"run {code}", study),
            KeyDeed.Confirm or KeyDeed.ShiftOn or KeyDeed.ShiftBack => StopGate.ObjectionIn(study),
            KeyDeed.Undo => ObjectionTo(Line, study),
            KeyDeed.Answer when Where == ScreenName.Reveal => KeyGate.ObjectionIn(study),
            _ => null,
        };

    /// <summary>Whether it shows a screen.</summary>
    public bool GoesTo(string screen) => Deed == KeyDeed.Screen && Line == screen;

    /// <summary>Whether a typed character is one of the keys; letter case does not count.</summary>
    public bool Has(char typed) => Keys.Any(key => key.Length == 1 && char.ToLowerInvariant(key[0]) == char.ToLowerInvariant(typed));

    /// <summary>Whether a key as the terminal tells it is one of the keys.</summary>
    public bool Has(Key pressed) => Keys.Any(name => Key.TryParse(name, out Key? known) && known == pressed);

    private static Objection? ObjectionTo(string line, Study study)
    {
        Parsed parsed = EntryText.Parse(line, study);
        return parsed.Objection ?? parsed.Entry!.ObjectionIn(study);
    }
}

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
        return isFresh ? null : new Objection(KeysWords.ReadingIsNotFresh, $"type 'flag {study.LastRun.Number}.{reading.Segment} {line}'");
    }

    private static Undoable? LastAct(Study study) => study.Undoables.Count == 0 ? null : study.Undoables[^1];
}
