using FieldSession.State;

namespace FieldSession.Terminal.Screens.Revealing;

/// <summary>What the reveal screen says.</summary>
internal static class RevealScreenWords
{
    public const string KeyStaysShut = "The key stays shut";
    public const string CustodianOpensKey = "Opening the key, by the custodian";
    public const string HowMarksAreRead = "Two people take the tape off each code's tyres and read the mark aloud; a name is shown only after that.";
    public const string KeyIsOpen = "The key is open";
    public const string CommitmentHolds = "it gives the published commitment";
    public const string CommitmentBroken = "it does NOT give the published commitment";
    public const string NoCommitment = "there was no commitment to check";
    public const string AsRead = "as read";
    public const string Again = "again";
    public const string MarksAreReadAgain = "Reading the marks again";
    public const string AskForSecondPassphrase = "the second person types theirs, hidden, then Enter. Esc begins again";
    public const string EnterReadsMarksAgain = $"Enter: read the marks again, each reading is kept; '{AsRead}': open it, names withheld";
    public const string AgainReadsMarks = $"'{Again}' Enter: two people read the marks once more; both readings are kept";
    public const string EnterStoresMarks = "Enter: stores this reading beside the first; Esc begins again";
    public const string NamesWithheld = "The report's headline withholds the names.";
    public const string KeyAndMarkColumns = "by the key; read on the tyres";
    public const string AskForKeyFile = "where the custodian's key file is: type its path, then Enter";
    public const string AskForPassphrase = "the custodian types the passphrase, hidden, then Enter; it takes a moment. Esc begins again";
    public const string AskForControl = "which spec is the control? hidden; Enter alone: the paper does not say";
    public const string AskForReaders = "who read the marks? two people, a name and Enter each";
    public const string EnterOpensKey = "Enter: opens the key for good; Esc begins again";
    public const string NoKeyFilesHere = "key files can't be opened here; use 'reveal' from the shell";
    public const string KeyGivenTwice = "that key was given already; give the key file of the other fitting";

    public static string NotAsInKey(string why) => $"nothing is stored yet: {why}";

    public static string ReadBefore(SpecCode code, string earlier) => $"first read on the tyres of {code}: {earlier}";

    public static string PaperLineOf(SpecCode code) => $"paper key: the spec behind {code}";

    public static string MarkOf(SpecCode code) => $"mark on the tyres of {code}";

    public static string MarksAgree(string readers) => $"the marks read by {readers} agree";

    public static string NoteNamesSpec(Note note) => $"! the note of line {note.Mark.Place}, written before, names a spec: {note.Words}";

    public static string AskForPaperLine(SpecCode? code) => $"the custodian types, hidden, the spec behind {code} by the paper key, then Enter";

    public static string AskForMark(SpecCode? code) => $"the mark under the tape of the tyres driven as {code}, then Enter";
}
