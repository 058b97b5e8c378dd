using System.Collections.Immutable;
using FieldSession.Predicting;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>A question of the prediction.</summary>
/// <param name="Word">The word of its answer in a prediction; empty: words to the end.</param>
/// <param name="Words">The question.</param>
/// <param name="Choices">What may be chosen: the key to press and what it means. Empty: free words.</param>
/// <param name="MayBeEmpty">Whether Enter alone is an answer: no opinion.</param>
internal sealed record Question(string Word, string Words, ImmutableArray<OfferedAnswer> Choices, bool MayBeEmpty)
{
    /// <summary>The questions on a study's codes, in the order they are asked.</summary>
    public static ImmutableArray<Question> Of(Study study)
    {
        ImmutableArray<OfferedAnswer> codes =
        [
            .. study.Codes.Select((code, place) => new OfferedAnswer($"{place + 1}", code.Digits, code.Digits)),
        ];
        return
        [
            new("feature", PredictScreenWords.AskForFeature(codes.Length), codes, false),
            new(
                "sure",
                PredictScreenWords.AskHowSure,
                [.. Sureness.Select((words, place) => new OfferedAnswer($"{place + 1}", words, $"{place + 1}"))],
                false
            )
            {
                MayBePercent = true,
            },
            new("quieter", PredictScreenWords.AskForQuieter, codes, true),
            new("pay", PredictScreenWords.AskForPaying, [new("y", "yes", "yes"), new("n", "no", "no")], true),
            new(
                "because",
                PredictScreenWords.AskForBasis,
                [
                    new("1", PredictScreenWords.FromSoundAndFeel, "sound"),
                    new("2", PredictScreenWords.FromSomethingSeen, "seen"),
                    new("3", "a guess", "guess"),
                ],
                false
            ),
            new("", PredictScreenWords.AskForOwnWords, [], true),
        ];
    }

    /// <summary>Whether per cent are an answer too, such as 80%.</summary>
    public bool MayBePercent { get; init; }

    private static string[] Sureness => ["a guess", "a little", "fairly", "quite", "certain"];

    /// <summary>The value that a typed answer means; null: it means none.</summary>
    public string? ValueOf(string typed)
    {
        if (typed.Length == 0 || Choices.IsEmpty)
        {
            return MayBeEmpty || typed.Length > 0 ? typed : null;
        }

        return Choices
                .FirstOrDefault(choice => CrewMember.SamePerson(choice.Key, typed) || CrewMember.SamePerson(choice.Value, typed))
                ?.Value
            ?? (MayBePercent && PredictionScale.Read(typed) is { Percent: >= 1 and <= 100 } ? typed : null);
    }

    /// <summary>Why a typed answer is none, and which ones are.</summary>
    public string Objection(string typed) =>
        typed.Length == 0
            ? PredictScreenWords.NeedsAnAnswer
            : PredictScreenWords.NoAnswer(typed, string.Join(", ", Choices.Select(choice => choice.Key)));

    /// <summary>A value in the words in which it was offered.</summary>
    public string Shown(string value) =>
        value.Length == 0 ? "no opinion" : Choices.FirstOrDefault(choice => choice.Value == value)?.Words ?? value;
}

/// <summary>Something that may be chosen.</summary>
/// <param name="Key">What is typed for it.</param>
/// <param name="Words">What it means.</param>
/// <param name="Value">How it is in the prediction.</param>
internal sealed record OfferedAnswer(string Key, string Words, string Value);

/// <summary>What the screen of the predictions says.</summary>
internal static class PredictScreenWords
{
    public const string RulesOfPredicting =
        "Each alone, the others look away. A locked prediction can't be changed and stays hidden until all are locked; "
        + "with the first one the readings freeze.";
    public const string AllLocked = "Predictions, all locked";
    public const string OrPerCent = "or per cent, such as 80%";
    public const string EnterIsNoOpinion = "  Enter alone: no opinion";
    public const string LastWordBeforeLocking = "Enter locks this for good; Esc goes back a question.";
    public const string EnterLocks = "Enter: locks it for good; Esc: back a question";
    public const string TypeOwnWords = "type your words, or Enter alone; Esc: back a question";
    public const string NeedsAnAnswer = "this one needs an answer";
    public const string AskHowSure = "How sure are you?";
    public const string AskForQuieter = "Which code is quieter?";
    public const string AskForPaying = "Would you pay for it?";
    public const string AskForBasis = "What is it based on?";
    public const string FromSoundAndFeel = "the sound, the feel of the car";
    public const string FromSomethingSeen = "something seen or overheard";
    public const string AskForOwnWords = "More in your own words?";

    // with several candidates one of them is named: that is what the sureness is about
    public static string AskForFeature(int codes) =>
        codes > 2 ? "Which code is a new spec, not the control? Name one." : "Which code is the new spec?";

    public static string AnswersAlone(string person) => $"{person}, alone; the others look away";

    public static string Told(Prediction told)
    {
        string quieter = told.Quieter is { } code ? $"{code} is quieter" : "no opinion on which is quieter";
        string pay = told.WouldPay switch
        {
            true => "would pay",
            false => "would not pay",
            null => "no opinion on paying",
        };
        string words = told.Words is null ? "" : $"; \"{told.Words}\"";
        return $"{told.Feature} is the new spec, sure {PredictionScale.InWords(told)}; {quieter}; {pay}; from: "
            + $"{told.Basis.ToString().ToLowerInvariant()}{words}";
    }

    public static string AskWhoPredicts(string people) => $"who predicts? type your number, then Enter: {people}";

    public static string TypeAChoice(string choices) => $"type {choices}, then Enter; Esc: back a question";

    public static string NobodyToPredict(string answer) => $"'{answer}' has no open prediction";

    public static string NoAnswer(string answer, string choices) => $"'{answer}' is not an answer here: type {choices}";
}
