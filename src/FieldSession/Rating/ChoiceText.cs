using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Reads <c>choose Tam first</c> or <c>choose Tam 2</c> (the place chosen), with <c>unseen</c> where Tam saw neither the meter nor a
/// comparison, and with <c>set=2</c> where several sets are open. It is the next planned trial that is chosen in. A code is taken only in a
/// set of an older program, which told the codes on the screen.
/// </summary>
public static class ChoiceText
{
    private const string Unseen = "unseen";

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
        string person = CrewMember.NameMeant(study.Plan?.Crew, string.Join(' ', words.Skip(1).Take(name)));
        string[] rest = words[Math.Min(words.Length, 1 + name)..];
        bool saysUnseen = Array.Exists(rest, word => Typed.Is(word, Unseen));
        return rest.Where(word => !Typed.Is(word, Unseen)).ToArray() switch
        {
            [var chosen] => Of(new Said(person, chosen, saysUnseen), null, study),
            [var chosen, var set] when AskedSet(set) is { } asked => Of(new Said(person, chosen, saysUnseen), asked, study),
            [_, var stranger] => Parsed.No(RatingWords.IsNoPartOfChoice(stranger), RatingWords.ChoiceFormWithSet(ExampleNames.In(study))),
            _ => Parsed.No(RatingWords.ChoiceNamesPersonAndPlace, RatingWords.ChoiceForm(ExampleNames.In(study))),
        };
    }

    /// <summary>The set that "set=2" asks for; null: the word says something else.</summary>
    internal static int? AskedSet(string word) =>
        word.StartsWith("set=", StringComparison.OrdinalIgnoreCase) ? Typed.Count(word[4..]) : null;

    private static int PlaceIn(string chosen) =>
        chosen.Length == 1 ? Typed.Count(chosen) ?? 0 : Array.FindIndex(Places, word => Typed.Is(chosen, word)) + 1;

    private static Parsed Of(Said said, int? asked, Study study)
    {
        SpecCode? code = SpecCode.Parse(said.Chosen);
        int place = PlaceIn(said.Chosen);
        if (code is null && place == 0)
        {
            return Parsed.No(RatingWords.IsNeitherCodeNorPlace(said.Chosen), RatingWords.ChoiceForm(ExampleNames.In(study)));
        }

        if (SetIn(study, asked, code) is not { } set)
        {
            return Parsed.No(WhyNoSet(study, asked, code), RatingWords.TrialsForm(ExampleNames.In(study)));
        }

        return set.IsComplete || code is not { } one ? Made(said, set, Math.Max(1, place)) : ByCode(said, one, set, study);
    }

    private static Parsed Made(Said said, ChoiceSet set, int place) =>
        Parsed.As(new ChoiceMade(said.Person, set.Number, set.NextTrial, place, said.Unseen ? true : null));

    private static Parsed ByCode(Said said, SpecCode code, ChoiceSet set, Study study)
    {
        if (set.Terms.Kind == ChoiceKind.Triangle)
        {
            return Parsed.No(RatingWords.TriangleIsChosenByPlace, RatingWords.TriangleForm(said.Person));
        }

        if (set.IsSealed)
        {
            return Parsed.No(RatingWords.CodesOfTrialAreNotTold, RatingWords.ChooseByPlace(said.Person));
        }

        int at =
            set.CodeAt(set.NextTrial, 1) == code ? 1
            : set.CodeAt(set.NextTrial, 2) == code ? 2
            : 0;
        return at > 0
            ? Made(said, set, at)
            : Parsed.No(RatingWords.SetIsAboutOtherCodes(set, code), RatingWords.ChoiceForm(ExampleNames.In(study)));
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

    private static string WhyNoSet(Study study, int? asked, SpecCode? code) =>
        (asked, code) switch
        {
            ({ } number, _) => RatingWords.ThereIsNoSetOfTrials(number),
            (_, { } one) when study.ChoiceSets.Count > 0 => RatingWords.NoTrialsAreAboutCode(one),
            _ => RatingWords.NoTrialsArePlanned,
        };

    /// <summary>What was typed of a choice.</summary>
    /// <param name="Person">Who chooses.</param>
    /// <param name="Chosen">The place, or a code.</param>
    /// <param name="Unseen">Whether they say that they saw neither meter nor comparison.</param>
    private readonly record struct Said(string Person, string Chosen, bool Unseen);
}
