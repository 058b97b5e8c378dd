namespace FieldSession.Revealing;

/// <summary>What is said when the key is opened, and why it stays shut.</summary>
internal static class RevealingWords
{
    // Why the key stays shut
    public const string KeyIsOpenAlready = "the key is open already";
    public const string AskForReport = "ask for the report";
    public const string DriveReviewAndPredictFirst = "drive, review and predict first";
    public const string LockPredictionsFirst = "lock them with 'predict' first";

    public static string PredictionsAreStillOpen(string persons) => $"predictions are still open: {persons}";

    // What is wrong with the keys
    public const string GiveKeyOfEveryFitting = "every fitting has a key of its own: 'reveal --key FIRST --key SECOND'";
    public const string GiveKeyOfThisStudy = "give the key of this study";
    public const string GiveKeyOfEachFittingOnce = "give the key of each fitting once";
    public const string KeysNameDifferentControls = "the keys do not name the same control spec";
    public const string LookWhoseKeysTheyAre = "look whether all of them belong to this study's fittings";
    public const string ControlNotOnPaperKey = "the control is none of the specs of the paper key";
    public const string WriteControlAsOnKey = "write it as the key writes it";
    public const string WhatMarkNames = "a mark names a code and what stands on its tyres";
    public const string WhatPaperLineNames = "a line of the paper key names a code and its spec";

    public static string KeyDoesNotName(string codes) => $"the key does not name {codes}";

    public static string CodesInTwoKeys(string codes) => $"{codes} stands in two keys";

    public static string GiveNameOfEachCode(string codes) => $"give 'CODE=NAME' for each of {codes}";

    // What is said when it opens
    public const string CommitmentDoesNotHold = "it does NOT give the published commitment";
    public const string ThereWasNoCommitment = "there was no commitment";
    public const string CommitmentHolds = "it gives the published commitment";
    public const string MarksDoNotAgree = "do NOT agree or were not read by two people";

    public static string KeyIsOpen(string commitment, string marks) => $"the key is open; {commitment}; the marks on the tyres {marks}";
}
