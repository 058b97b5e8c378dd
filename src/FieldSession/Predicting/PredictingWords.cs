using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>What locked predictions say, and why one can't be.</summary>
internal static class PredictingWords
{
    public const string UseNewerProgram = "use a newer program";
    public const string StudyHasNoPlan = "the study has no plan";
    public const string MakeItWithStartFirst = "make it with 'start' first";
    public const string KeyIsOpen = "the key is open";
    public const string PredictionComesBeforeIt = "a prediction comes before it";
    public const string TypeEndOrFinishItFirst = "type 'end', or finish it first";
    public const string LaptopsAreInConflict = "laptops are in conflict";
    public const string SettleItFirst = "settle it first: 'settle 1 first because WHY'; 'merge' and 'review' list the conflicts";
    public const string NothingHasBeenDriven = "nothing has been driven";
    public const string DriveEveryCodeBeforePredicting = "drive every code before predicting";
    public const string ItCantBeChanged = "it can't be changed";
    public const string GiveGuessToCertainOrTo = "give 1 (a guess) to 5 (certain), or 1% to 100%";
    public const string TypePredictTamFeatureSureQuieterPayNoBecause = "type 'predict Tam feature=862 sure=3 quieter=417 pay=no because=sound words'";
    public const string PredictionNamesPerson = "a prediction names the person, the code with the feature, and how sure";
    public const string CodeWithFeatureIsMissingOrNoCode = "the code with the feature is missing or no three-digit code";
    public const string HowSureIsGuess = "how sure is 1 (a guess) to 5 (certain), or per cent such as 80%";
    public const string PayIsYesOrNo = "'pay' is yes or no";
    public const string BecauseIsSound = "'because' is sound, seen or guess";

    public static string RunIsStillOn(Run run) => $"run {run.Number} is still on";

    public static string PredictionOfLocked(string person) => $"prediction of {person} locked; all are locked, the key can be opened";

    public static string PredictionOfLockedAndHidden(string person, string open) => $"prediction of {person} locked and hidden; still open: {open}";

    public static string HasNotBeenDriven(string undriven) => $"{undriven} has not been driven";

    public static string IsNotInCrew(string person) => $"'{person}' is not in the crew";

    public static string CrewIs(string crew) => $"the crew is {crew}";

    public static string HasLockedPredictionAlready(string person) => $"{person} has locked a prediction already";

    public static string DoesNotSayHowSure(object more) => $"{more} does not say how sure";

    public static string IsNoCodeThatWasDriven(SpecCode code) => $"{code} is no code that was driven";

    public static string CodesAre(string codes) => $"the codes are {codes}";

    public static string IsNoPartOfPrediction(string stranger) => $"'{stranger}' is no part of a prediction";

    public static string IsNoCode(string answers) => $"'{answers}' is no three-digit code";
}
