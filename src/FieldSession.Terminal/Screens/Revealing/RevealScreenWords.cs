using FieldSession.State;

namespace FieldSession.Terminal.Screens.Revealing;

/// <summary>What the reveal screen says.</summary>
internal static class RevealScreenWords
{
    public const string KeyStaysShut = "The key stays shut";
    public const string OpeningKeyByCustodian = "Opening the key, by the custodian";
    public const string TwoPeopleTakeTapeOffTyresOfEach = "Two people take the tape off the tyres of each code and read the mark aloud; a name is shown only after that.";
    public const string KeyIsOpen = "The key is open";
    public const string ItGivesPublishedCommitment = "it gives the published commitment";
    public const string ItDoesNotGivePublishedCommitment = "it does NOT give the published commitment";
    public const string ThereWasNoCommitmentToCheck = "there was no commitment to check";
    public const string MarksDoNotAgreeWithKey = "the marks do NOT agree with the key, or two people did not read them";
    public const string ReportsHeadlineWithholdsNames = "The report's headline withholds the names.";
    public const string ByKeyReadOnTyres = "by the key; read on the tyres";
    public const string WhereCustodiansKeyFileIsType = "where the custodian's key file is: type its path, then Enter";
    public const string CustodianTypesPassphrase = "the custodian types the passphrase, hidden, then Enter; it takes a moment. Esc begins again";
    public const string WhichSpecIsControlHidden = "which spec is the control? hidden; Enter alone: the paper does not say";
    public const string WhoReadMarksTwoPeople = "who read the marks? two people, a name and Enter each";
    public const string EnterOpensKeyForGoodEsc = "Enter: opens the key for good; Esc begins again";
    public const string KeyFilesCantBeOpenedHere = "key files can't be opened here; use 'reveal' from the shell";
    public const string ThatKeyIsOnRingAlready = "that key is on the ring already; give the key file of the other fitting";

    public static string PaperKeySpecBehind(SpecCode code) => $"paper key: the spec behind {code}";

    public static string MarkOnTyresOf(SpecCode code) => $"mark on the tyres of {code}";

    public static string MarksReadByAgree(string readers) => $"the marks read by {readers} agree";

    public static string NoteOfLine(Note note) => $"! the note of line {note.Mark.Place}, written before, names a spec: {note.Words}";

    public static string CustodianTypesHiddenSpecBehindByPaper(SpecCode? paperDue) => $"the custodian types, hidden, the spec behind {paperDue} by the paper key, then Enter";

    public static string MarkUnderTapeOfTyresDrivenAsThenEnter(SpecCode? codeDue) => $"the mark under the tape of the tyres driven as {codeDue}, then Enter";
}
