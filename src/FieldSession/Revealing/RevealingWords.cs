using FieldSession.State;

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

/// <summary>Why names are withheld: which check failed, and for which codes.</summary>
public static class WithheldWords
{
    /// <summary>The failed checks, each in words; empty: none failed.</summary>
    /// <param name="marks">How the marks compare with the key.</param>
    /// <param name="commitmentHolds">Whether the key gives the published commitment; null: there was none.</param>
    public static IEnumerable<string> Of(MarkCheck marks, bool? commitmentHolds)
    {
        ArgumentNullException.ThrowIfNull(marks);
        return
        [
            .. commitmentHolds == false ? ["the key does NOT give the published commitment"] : Array.Empty<string>(),
            .. marks.Differ.IsEmpty ? Array.Empty<string>() : [MarksDiffer(marks.Differ)],
            .. marks.NotRead.IsEmpty ? Array.Empty<string>() : [$"nobody read the mark of {string.Join(" and ", marks.NotRead)}"],
            .. marks.ReadByTwo ? Array.Empty<string>() : ["the marks were not read by two different people"],
        ];
    }

    /// <summary>Which codes' marks are not those in the key.</summary>
    public static string MarksDiffer(IEnumerable<SpecCode> codes) =>
        $"the mark read on {string.Join(" and ", codes)} is NOT the one in the key";
}
