using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Reads <c>m</c> (missed), <c>u</c> (undo) and <c>seg 5</c>.</summary>
public static class MoveText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0)
        {
            return null;
        }

        if (Typed.Is(words[0], "seg"))
        {
            return words.Length == 2 && Typed.Count(words[1]) is { } number
                ? Parsed.As(new SegmentChosen(number))
                : Parsed.No(DrivingWords.SegmentIsChosenByNumber, "type 'seg 5'");
        }

        if (words.Length > 1)
        {
            return null;
        }

        if (Typed.Is(words[0], "m"))
        {
            return Parsed.As(new SegmentMissed());
        }

        return Typed.Is(words[0], "u") ? Undo(study) : null;
    }

    private static Parsed Undo(Study study) => study.Undoables.Count > 0
        ? Parsed.As(new ActUndone(study.Undoables[^1].Line))
        : Parsed.No(DrivingWords.ThereIsNothingToTakeBack, "go on");
}
