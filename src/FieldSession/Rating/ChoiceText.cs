using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Reads <c>choose Tam 862</c> (the code chosen), <c>choose Tam first</c> or <c>choose Tam 2</c> (the place chosen; the only way in a
/// triangle), each with <c>set=2</c> where several sets are open. It is the next planned trial that is chosen in.
/// </summary>
public static class ChoiceText
{
    /// <summary>How trials are planned.</summary>
    public const string PlanForm = RatingWords.TrialsForm;

    private const string Form = RatingWords.ChoiceForm;

    private static string[] Places => ["first", "second", "third"];

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !(Typed.Is(words[0], "choose") || Typed.Is(words[0], "choice")))
        {
            return null;
        }

        int name = EarGate.WordsOfName(words[1..], study);
        string person = string.Join(' ', words.Skip(1).Take(name));
        return words[Math.Min(words.Length, 1 + name)..] switch
        {
            [var chosen] => Of(person, chosen, null, study),
            [var chosen, var set] when AskedSet(set) is { } asked => Of(person, chosen, asked, study),
            [_, var stranger] => Parsed.No(RatingWords.IsNoPartOfChoice(stranger), RatingWords.ChoiceFormWithSet),
            _ => Parsed.No(RatingWords.ChoiceNamesPersonAndPlace, Form),
        };
    }

    private static int? AskedSet(string word) => word.StartsWith("set=", StringComparison.OrdinalIgnoreCase) ? Typed.Count(word[4..]) : null;

    private static int PlaceIn(string chosen) => chosen.Length == 1
        ? Typed.Count(chosen) ?? 0
        : Array.FindIndex(Places, word => Typed.Is(chosen, word)) + 1;

    private static Parsed Of(string person, string chosen, int? asked, Study study)
    {
        SpecCode? code = SpecCode.Parse(chosen);
        int place = PlaceIn(chosen);
        if (code is null && place == 0)
        {
            return Parsed.No(RatingWords.IsNeitherCodeNorPlace(chosen), Form);
        }

        if (SetIn(study, asked, code) is not { } set)
        {
            return Parsed.No(WhyNoSet(study, asked, code), PlanForm);
        }

        return set.IsComplete || code is not { } one
            ? Parsed.As(new ChoiceMade(person, set.Number, set.NextTrial, Math.Max(1, place)))
            : ByCode(person, one, set);
    }

    private static Parsed ByCode(string person, SpecCode code, ChoiceSet set)
    {
        if (set.Terms.Kind == ChoiceKind.Triangle)
        {
            return Parsed.No(RatingWords.TriangleIsChosenByPlace, RatingWords.TriangleForm(person));
        }

        int at = set.CodeAt(set.NextTrial, 1) == code ? 1 : set.CodeAt(set.NextTrial, 2) == code ? 2 : 0;
        return at > 0
            ? Parsed.As(new ChoiceMade(person, set.Number, set.NextTrial, at))
            : Parsed.No(RatingWords.SetIsAboutOtherCodes(set, code), Form);
    }

    private static ChoiceSet? SetIn(Study study, int? asked, SpecCode? code)
    {
        if (asked is { } number)
        {
            return number <= study.ChoiceSets.Count ? study.ChoiceSets[number - 1] : null;
        }

        ChoiceSet[] fitting = [.. study.ChoiceSets.Where(set => code is null || set.Terms.First == code || set.Terms.Second == code)];
        return fitting.FirstOrDefault(set => !set.IsComplete) ?? fitting.LastOrDefault();
    }

    private static string WhyNoSet(Study study, int? asked, SpecCode? code) => (asked, code) switch
    {
        ({ } number, _) => RatingWords.ThereIsNoSetOfTrials(number),
        (_, { } one) when study.ChoiceSets.Count > 0 => RatingWords.NoTrialsAreAboutCode(one),
        _ => RatingWords.NoTrialsArePlanned,
    };
}
