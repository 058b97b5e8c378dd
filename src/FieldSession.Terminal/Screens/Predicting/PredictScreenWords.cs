using FieldSession.State;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>What the screen of the predictions says.</summary>
internal static class PredictScreenWords
{
    public const string RulesOfPredicting = "Each alone, the others look away. A locked prediction can't be changed and stays hidden until all are locked; with the first one the readings freeze.";
    public const string AllLocked = "Predictions, all locked";
    public const string EnterIsNoOpinion = "  Enter alone: no opinion";
    public const string LastWordBeforeLocking = "Enter locks this for good; Esc goes back a question.";
    public const string EnterLocks = "Enter: locks it for good; Esc: back a question";
    public const string TypeOwnWords = "type your words, or Enter alone; Esc: back a question";
    public const string NeedsAnAnswer = "this one needs an answer";
    public const string AskForFeature = "Which code is the new spec?";
    public const string AskHowSure = "How sure are you?";
    public const string AskForQuieter = "Which code is quieter?";
    public const string AskForPaying = "Would you pay for it?";
    public const string AskForBasis = "What is it based on?";
    public const string FromSoundAndFeel = "the sound, the feel of the car";
    public const string FromSomethingSeen = "something seen or overheard";
    public const string AskForOwnWords = "More in your own words?";

    public static string AnswersAlone(string person) => $"{person}, alone; the others look away";

    public static string Told(Prediction told)
    {
        string quieter = told.Quieter is { } code ? $"{code} is quieter" : "no opinion on which is quieter";
        string pay = told.WouldPay switch { true => "would pay", false => "would not pay", null => "no opinion on paying" };
        string words = told.Words is null ? "" : $"; \"{told.Words}\"";
        return $"{told.Feature} is the new spec, sure {told.Sure} of 5; {quieter}; {pay}; from: {told.Basis.ToString().ToLowerInvariant()}{words}";
    }

    public static string AskWhoPredicts(string people) => $"who predicts? type your number, then Enter: {people}";

    public static string TypeAChoice(string choices) => $"type {choices}, then Enter; Esc: back a question";

    public static string NobodyToPredict(string answer) => $"'{answer}' has no open prediction";

    public static string NoAnswer(string answer, string choices) => $"'{answer}' is not an answer here: type {choices}";
}
