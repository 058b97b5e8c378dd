namespace FieldSession.Revealing;

/// <summary>What is said when the key is opened, and why it stays shut.</summary>
internal static class RevealingWords
{
    // Why the key stays shut
    public const string KeyIsOpenAlready = "the key is open already";
    public const string AskForReport = "ask for the report; 'reveal --again' reads the marks once more";
    public const string DriveReviewAndPredictFirst = "drive, review and predict first";
    public const string LockPredictionsFirst = "lock them with 'predict' first";

    public static string PredictionsAreStillOpen(string persons) => $"predictions are still open: {persons}";

    // What is wrong with the keys
    public const string GiveKeyOfEveryFitting = "every fitting has a key of its own: 'reveal --key FIRST --key SECOND'";
    public const string GiveKeyOfThisStudy = "give the key of this study";
    public const string GiveKeyOfEachFittingOnce = "give the key of each fitting once";
    public const string GiveKeyFileInstead = "give its key file with '--key'; a paper key can't take its place";
    public const string KeysNameDifferentControls = "the keys do not name the same control spec";
    public const string LookWhoseKeysTheyAre = "look whether all of them belong to this study's fittings";
    public const string ControlNotOnPaperKey = "the control is none of the specs of the paper key";
    public const string WriteControlAsOnKey = "write it as the key writes it";
    public const string WhatMarkNames = "a mark names a code and what is written on its tyres";
    public const string WhatPaperLineNames = "a line of the paper key names a code and its spec";

    public static string KeyDoesNotName(string codes) => $"the key does not name {codes}";

    public static string CodesAreSealedInFile(string codes) => $"{codes}: sealed with a key file and a commitment";

    public static string CodesInTwoKeys(string codes) => $"{codes} is in two keys";

    public static string GiveNameOfEachCode(string codes) => $"give 'CODE=NAME' for each of {codes}";

    // What is said when it opens
    public const string CommitmentDoesNotHold = "it does NOT give the published commitment";
    public const string ThereWasNoCommitment = "there was no commitment";
    public const string CommitmentHolds = "it gives the published commitment";
    public const string MarksAgree = "the marks on the tyres agree";

    public static string KeyIsOpen(string commitment, string marks) => $"the key is open; {commitment}; {marks}";

    // Marks read again
    public const string KeyIsNotOpenYet = "the key is not open yet";
    public const string ReadMarksAtReveal = "the marks are read when it is opened";
    public const string MarksNeedTwoReaders = "the marks are read by two different people";
    public const string NameTwoReaders = "name both";
    public const string ReadEveryMarkAgain = "read the marks of every driven code again";

    public static string MarksNotRead(string codes) => $"the mark of {codes} was not read";

    public static string MarksWereReadAgain(string marks) => $"the marks were read again; {marks}; both readings are kept";
}
