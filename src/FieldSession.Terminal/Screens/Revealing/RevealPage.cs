using System.Collections.Immutable;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Revealing;

/// <summary>The opening of the key in words. A name is on it only after the key is open.</summary>
internal static class RevealPage
{
    private const int CodeColumns = 7;
    private const int LabelColumns = 34;

    /// <summary>Why the key can't be opened yet.</summary>
    public static ImmutableArray<PageRow> Barred(string why, int columns) =>
        [
            PageRow.Of(RevealScreenWords.KeyStaysShut, Ink.Strong),
            PageRow.Blank,
            .. Wrapped.Lines($"not now: {why}", columns - 2).Select(line => PageRow.Of($" {line} ", Ink.Alarm)),
        ];

    /// <summary>The way to the opened key, step by step.</summary>
    public static ImmutableArray<PageRow> Opening(Unlocking unlocking, Study study, string? keyOfDemo, int columns) =>
        [
            PageRow.Of(unlocking.IsAgain ? RevealScreenWords.MarksAreReadAgain : RevealScreenWords.CustodianOpensKey, Ink.Strong),
            .. Text(RevealScreenWords.HowMarksAreRead, columns),
            .. keyOfDemo is null ? [] : Text(keyOfDemo, columns),
            PageRow.Blank,
            .. unlocking.IsAgain ? [] : KeyRows(unlocking, study),
            .. unlocking.IsAgain
                ? []
                : Unlocking
                    .PaperCodes(study)
                    .Select(code =>
                        Row(
                            RevealScreenWords.PaperLineOf(code),
                            unlocking.Paper.Contains(code) ? "typed" : "",
                            unlocking.Paper.Contains(code)
                        )
                    ),
            .. study.DrivenCodes.Select(
                (code, place) =>
                    Row(RevealScreenWords.MarkOf(code), place < unlocking.Marks.Length ? "typed" : "", place < unlocking.Marks.Length)
            ),
            Row("first reader", unlocking.Readers.ElementAtOrDefault(0) ?? "", unlocking.Readers.Length > 0),
            Row("second reader", unlocking.Readers.ElementAtOrDefault(1) ?? "", unlocking.Readers.Length > 1),
        ];

    /// <summary>How the checks came out, and then who is who.</summary>
    public static ImmutableArray<PageRow> Opened(Study study, OpenedKey key, int columns)
    {
        Opening opening = study.Opening!;
        return
        [
            PageRow.Of(RevealScreenWords.KeyIsOpen, Ink.Strong),
            PageRow.Blank,
            .. Check(
                opening.CommitmentHolds,
                RevealScreenWords.CommitmentHolds,
                RevealScreenWords.CommitmentBroken,
                RevealScreenWords.NoCommitment,
                columns
            ),
            .. opening.MarksAgree
                ? Check(true, RevealScreenWords.MarksAgree(string.Join(" and ", opening.Readers)), "", "", columns)
                : WithheldWords.Of(opening.Marks, null).SelectMany(why => Check(false, "", why, "", columns)),
            .. key.NamesAllowed ? [] : Text(RevealScreenWords.NamesWithheld, columns),
            PageRow.Blank,
            PageRow.Of(Columns.Left("code", CodeColumns) + RevealScreenWords.KeyAndMarkColumns, Ink.Quiet),
            .. key.Key.SelectMany(coded => Coded(coded, key, columns)),
            .. key
                .DrivenKey.Where(coded => key.EarlierMarkOf(coded.Code).Length > 0)
                .SelectMany(coded => Text(RevealScreenWords.ReadBefore(coded.Code, key.EarlierMarkOf(coded.Code)), columns)),
            PageRow.Blank,
            .. key.NotesThatName(study).SelectMany(note => Text(RevealScreenWords.NoteNamesSpec(note), columns)),
        ];
    }

    private static IEnumerable<PageRow> KeyRows(Unlocking unlocking, Study study)
    {
        int files = unlocking.Files.Length + unlocking.Ring.KeysLacking(study);
        for (int file = 0; file < files; file++)
        {
            string of = files > 1 ? $" {file + 1} of {files}" : "";
            bool isOpen = file < unlocking.Files.Length;
            string? path =
                isOpen ? unlocking.Files[file]
                : file == unlocking.Files.Length ? unlocking.Path
                : null;
            yield return Row($"key file{of}", path ?? "", path is not null);
            yield return Row($"passphrase{of}", PassphraseWord(unlocking, file), PassphraseWord(unlocking, file).Length > 0);
        }
    }

    private static string PassphraseWord(Unlocking unlocking, int file) =>
        file < unlocking.Files.Length ? "it fits"
        : file == unlocking.Files.Length && unlocking.NeedsSecond ? "first typed"
        : "";

    private static IEnumerable<PageRow> Coded(CodedSpec coded, OpenedKey key, int columns)
    {
        string read = key.MarkOf(coded.Code) is { Length: > 0 } mark ? mark : "not read";
        string drawn = coded.Mark is { } wanted ? $", mark {wanted}" : "";
        string words = $"{coded.Spec}{(coded.Spec == key.Control ? " (control)" : "")}{drawn}; {read}";
        return Wrapped
            .Lines(words, columns - CodeColumns)
            .Select(
                (line, place) => PageRow.Of(Columns.Left(place == 0 ? $"{coded.Code}" : "", CodeColumns), Ink.Strong).And(line, Ink.Strong)
            );
    }

    private static IEnumerable<PageRow> Check(bool? holds, string yes, string no, string unknown, int columns) =>
        Wrapped
            .Lines(
                holds switch
                {
                    true => $"ok  {yes}",
                    false => $"NO  {no}",
                    null => $"--  {unknown}",
                },
                columns - 2
            )
            .Select(line => holds == false ? PageRow.Of($" {line} ", Ink.Alarm) : PageRow.Of(line));

    private static PageRow Row(string label, string said, bool isSaid) =>
        PageRow.Of(isSaid ? "+ " : ". ").And(Columns.Left(label, LabelColumns - 2), Ink.Quiet).And(said);

    private static IEnumerable<PageRow> Text(string words, int columns) => Wrapped.Lines(words, columns).Select(line => PageRow.Of(line));
}

/// <summary>What the reveal screen says.</summary>
internal static class RevealScreenWords
{
    public const string KeyStaysShut = "The key stays shut";
    public const string CustodianOpensKey = "Opening the key, by the custodian";
    public const string HowMarksAreRead =
        "Two people take the tape off each code's tyres and read the mark aloud; a name is shown only after that.";
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

    public static string AskForPaperLine(SpecCode? code) =>
        $"the custodian types, hidden, the spec behind {code} by the paper key, then Enter";

    public static string AskForMark(SpecCode? code) => $"the mark under the tape of the tyres driven as {code}, then Enter";
}
