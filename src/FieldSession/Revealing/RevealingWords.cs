using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>What is said when the key is opened, and why it stays shut.</summary>
internal static class RevealingWords
{
    public const string UseNewerProgram = "use a newer program";
    public const string StudyHasNoPlan = "the study has no plan";
    public const string MakeItWithStartFirst = "make it with 'start' first";
    public const string KeyIsOpenAlready = "the key is open already";
    public const string AskForReport = "ask for the report";
    public const string TypeEndOrFinishItFirst = "type 'end', or finish it first";
    public const string LaptopsAreInConflict = "laptops are in conflict";
    public const string SettleItFirst = "settle it first: 'settle 1 first because WHY'; 'merge' and 'review' list the conflicts";
    public const string NothingHasBeenDriven = "nothing has been driven";
    public const string DriveReviewAndPredictFirst = "drive, review and predict first";
    public const string LockThemWithPredictFirst = "lock them with 'predict' first";
    public const string EveryFittingHasKeyOfItsOwn = "every fitting has a key of its own: 'reveal --key FIRST --key SECOND'";
    public const string GiveKeyOfThisStudy = "give the key of this study";
    public const string ItDoesNotGivePublishedCommitment = "it does NOT give the published commitment";
    public const string ThereWasNoCommitment = "there was no commitment";
    public const string ItGivesPublishedCommitment = "it gives the published commitment";
    public const string DoNotAgreeOrWereNotReadByTwo = "do NOT agree or were not read by two people";
    public const string GiveKeyOfEachFittingOnce = "give the key of each fitting once";
    public const string KeysDoNotNameSameControlSpec = "the keys do not name the same control spec";
    public const string LookWhetherAllOfThemBelongToThisStudys = "look whether all of them belong to this study's fittings";
    public const string ControlIsNoneOfSpecsOfPaperKey = "the control is none of the specs of the paper key";
    public const string WriteItAsKeyWritesIt = "write it as the key writes it";
    public const string MarkNamesCodeAndWhatStandsOnItsTyres = "a mark names a code and what stands on its tyres";
    public const string LineOfPaperKeyNamesCodeAndItsSpec = "a line of the paper key names a code and its spec";

    public static string RunIsStillOn(Run run) => $"run {run.Number} is still on";

    public static string PredictionsAreStillOpen(string open) => $"predictions are still open: {open}";

    public static string KeyDoesNotName(string missing) => $"the key does not name {missing}";

    public static string KeyIsOpen(string more, string more2) => $"the key is open; {more}; the marks on the tyres {more2}";

    public static string StandsInTwoKeys(string inWords) => $"{inWords} stands in two keys";

    public static string GiveCodeNameForEachOf(string codes) => $"give 'CODE=NAME' for each of {codes}";
}
