using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>A question of the prediction.</summary>
/// <param name="Word">The word of its answer in a prediction; empty: words to the end.</param>
/// <param name="Words">The question.</param>
/// <param name="Choices">What may be chosen: the key to press and what it means. Empty: free words.</param>
/// <param name="MayBeEmpty">Whether Enter alone is an answer: no opinion.</param>
internal sealed record Question(string Word, string Words, ImmutableArray<Choice> Choices, bool MayBeEmpty)
{
    /// <summary>The questions on a study's codes, in the order they are asked.</summary>
    public static ImmutableArray<Question> Of(Study study)
    {
        ImmutableArray<Choice> codes = [.. study.Codes.Select((code, place) => new Choice($"{place + 1}", code.Digits, code.Digits))];
        return
        [
            new("feature", PredictScreenWords.AskForFeature, codes, false),
            new("sure", PredictScreenWords.AskHowSure, [.. Sureness.Select((words, place) => new Choice($"{place + 1}", words, $"{place + 1}"))], false),
            new("quieter", PredictScreenWords.AskForQuieter, codes, true),
            new("pay", PredictScreenWords.AskForPaying, [new("y", "yes", "yes"), new("n", "no", "no")], true),
            new("because", PredictScreenWords.AskForBasis, [new("1", PredictScreenWords.FromSoundAndFeel, "sound"), new("2", PredictScreenWords.FromSomethingSeen, "seen"), new("3", "a guess", "guess")], false),
            new("", PredictScreenWords.AskForOwnWords, [], true),
        ];
    }

    private static string[] Sureness => ["a guess", "a little", "fairly", "quite", "certain"];

    /// <summary>The value that a typed answer means; null: it means none.</summary>
    public string? ValueOf(string typed)
    {
        if (typed.Length == 0 || Choices.IsEmpty)
        {
            return MayBeEmpty || typed.Length > 0 ? typed : null;
        }

        return Choices.FirstOrDefault(choice => CrewMember.SamePerson(choice.Key, typed) || CrewMember.SamePerson(choice.Value, typed))?.Value;
    }

    /// <summary>A value in the words in which it was offered.</summary>
    public string Shown(string value) => value.Length == 0 ? "no opinion" : Choices.FirstOrDefault(choice => choice.Value == value)?.Words ?? value;
}

/// <summary>Something that may be chosen.</summary>
/// <param name="Key">What is typed for it.</param>
/// <param name="Words">What it means.</param>
/// <param name="Value">How it is in the prediction.</param>
internal sealed record Choice(string Key, string Words, string Value);
