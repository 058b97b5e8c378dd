using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>What locked predictions say, and why one can't be.</summary>
internal static class PredictingWords
{
    // Why none can be locked
    public const string KeyIsOpen = "the key is open";
    public const string PredictionComesBeforeKey = "a prediction comes before it";
    public const string EndRunFirst = "type 'end', or finish it first";
    public const string LaptopsAreInConflict = "laptops are in conflict";
    public const string SettleConflictFirst = "settle it first: 'settle 1 first because WHY'; 'merge' and 'review' list the conflicts";
    public const string DriveEveryCodeFirst = "drive every code before predicting";
    public const string ItCantBeChanged = "it can't be changed";
    public const string GiveStepOrPercent = "give 1 (a guess) to 5 (certain), or 1% to 100%";

    public static string RunIsStillOn(Run run) => $"run {run.Number} is still on";

    public static string CodesNotDriven(string codes) => $"{codes} has not been driven";

    public static string HasLockedPredictionAlready(string person) => $"{person} has locked a prediction already";

    public static string DoesNotSayHowSure(string sure) => $"{sure} does not say how sure";

    public static string NoDrivenCode(SpecCode code) => $"{code} is not a code that was driven";

    // How one is typed
    public const string PredictionForm = "type 'predict Tam feature=862 sure=3 quieter=417 pay=no because=sound words'";
    public const string WhatPredictionNames = "a prediction names the person, the code of the new spec, and how sure";
    public const string FeatureCodeMissing = "feature= is missing or not a three-digit code";
    public const string HowSureIsTyped = "how sure is 1 (a guess) to 5 (certain), or per cent such as 80%";
    public const string PayIsYesOrNo = "'pay' is yes or no";
    public const string BecauseIsTyped = "'because' is sound, seen or guess";

    public static string NoPartOfPrediction(string part) => $"'{part}' is not a part of a prediction";

    public static string NoThreeDigitCode(string typed) => $"'{typed}' is not a three-digit code";

    // What is said of a locked one
    public static string LastPredictionLocked(string person) => $"prediction of {person} locked; all are locked, the key can be opened";

    public static string PredictionLockedAndHidden(string person, string stillOpen) => $"prediction of {person} locked and hidden; still open: {stillOpen}";
}
