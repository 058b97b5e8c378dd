using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Reads <c>slip Ilse</c>, with <c>set=2</c> where several sets are open: who runs the trials and is shown their order.</summary>
public static class SlipText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "slip"))
        {
            return null;
        }

        bool namesSet = words.Length > 2 && ChoiceText.AskedSet(words[^1]) is not null;
        string person = string.Join(' ', namesSet ? words[1..^1] : words[1..]);
        return person.Length == 0
            ? Parsed.No(RatingWords.SlipNamesSomebody, RatingWords.SlipForm)
            : SetFor(study, namesSet ? ChoiceText.AskedSet(words[^1]) : null) is { } set
                ? Parsed.As(new SlipTaken(set, person))
                : Parsed.No(RatingWords.NoTrialsArePlanned, ChoiceText.PlanForm);
    }

    /// <summary>The set that is asked for, or the first that is open, or the last one; null: none is planned.</summary>
    public static int? SetFor(Study study, int? asked)
    {
        ArgumentNullException.ThrowIfNull(study);
        return asked ?? (study.ChoiceSets.Find(set => !set.IsComplete) ?? study.ChoiceSets.LastOrDefault())?.Number;
    }
}
