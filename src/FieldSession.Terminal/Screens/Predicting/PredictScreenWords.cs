using FieldSession.State;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>What the screen of the predictions says.</summary>
internal static class PredictScreenWords
{
    public const string EachAloneOthersLookAwayLocked = "Each alone, the others look away. A locked prediction can't be changed and stays hidden until all are locked; with the first one the readings freeze.";
    public const string PredictionsAllLocked = "Predictions, all locked";
    public const string WouldNotPay = "would not pay";
    public const string NoOpinionOnPaying = "no opinion on paying";
    public const string NoOpinionOnWhichIsQuieter = "no opinion on which is quieter";
    public const string EnterAloneNoOpinion = "  Enter alone: no opinion";
    public const string EnterLocksThisForGood = "Enter locks this for good; Esc goes back a question.";
    public const string EnterLocksItForGoodEsc = "Enter: locks it for good; Esc: back a question";
    public const string TypeYourWords = "type your words, or Enter alone; Esc: back a question";
    public const string ThisOneNeedsAnswer = "this one needs an answer";
    public const string WhichCodeHasFeature = "Which code has the feature?";
    public const string HowSureAreYou = "How sure are you?";
    public const string WhichCodeIsQuieter = "Which code is quieter?";
    public const string WouldYouPayForIt = "Would you pay for it?";
    public const string WhatDoesItRestOn = "What does it rest on?";
    public const string SoundFeelOfCar = "the sound, the feel of the car";
    public const string SomethingSeenOrOverheard = "something seen or overheard";
    public const string MoreInYourOwnWords = "More in your own words?";

    public static string AndAloneOthersLookAway(Telling telling) => $"{telling.Person}, alone; the others look away";

    public static string HasFeatureSureOfFrom(Prediction told, string quieter, string pay, string more) => $"{told.Feature} has the feature, sure {told.Sure} of 5; {quieter}; {pay}; from: {told.Basis.ToString().ToLowerInvariant()}{more}";

    public static string WhoIsItAlone(string open) => $"who is it, alone? type the number, then Enter: {open}";

    public static string TypeThenEnterEscBackQuestion(string choices) => $"type {choices}, then Enter; Esc: back a question";

    public static string IsNobodyWhosePredictionIsOpen(string answer) => $"'{answer}' is nobody whose prediction is open";

    public static string IsNoAnswerHere(string answer, string choices) => $"'{answer}' is no answer here: type {choices}";
}
