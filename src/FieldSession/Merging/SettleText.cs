using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>Reads <c>settle 1 first because the other laptop was a try</c>: which side of a conflict counts, and why.</summary>
public static class SettleText
{
    private const string Form = MergingWords.SettleForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "settle"))
        {
            return null;
        }

        return words is [_, var typed, var which, var because, _, ..] && Typed.Count(typed) is { } number && SideIn(which) is { } side && Typed.Is(because, "because")
            ? Settled(study, number, side, string.Join(' ', words.Skip(4)))
            : Parsed.No(MergingWords.DecisionNamesConflictSideReason, Form);
    }

    private static Parsed Settled(Study study, int number, ConflictSide side, string reason)
    {
        if (number > study.Conflicts.Count)
        {
            return Parsed.No(
                study.Conflicts.IsEmpty ? MergingWords.NoLaptopsAreInConflict : MergingWords.ThereIsNoConflict(number, study.Conflicts.Count), Form);
        }

        Conflict conflict = study.Conflicts[number - 1];
        return Parsed.As(new ConflictSettled(conflict.Kind, conflict.First.Name, conflict.Second.Name, side, reason));
    }

    private static ConflictSide? SideIn(string word) => word.ToUpperInvariant() switch
    {
        "FIRST" or "1" => ConflictSide.First,
        "SECOND" or "2" => ConflictSide.Second,
        "BOTH" => ConflictSide.Both,
        _ => null,
    };
}
