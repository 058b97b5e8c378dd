using System.Collections.Immutable;
using System.Reflection;
using FieldSession.Measures;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Terminal.Custodian;

/// <summary>What the custodian is told: what to do next, what to fit, what to mark. Specs are named to the custodian alone.</summary>
internal static class CustodianWords
{
    // sealing
    public const string TypeThemOnceMore = "the two are not the same; type them once more, the words offered stay the same";
    public const string PassphrasesDiffer = "the two passphrases are not the same; nothing was sealed, begin again";
    public const string AskForPassphrase = "passphrase of the key file: ";
    public const string AskForSecondPassphrase = "second person, passphrase of your own: ";
    public const string SecondPersonsTurn = "the screen was wiped; now the second person, alone";
    public const string PassphrasesAreWiped = "the screen was wiped; both passphrases are taken";
    public const string AskAgain = "the same passphrase again: ";
    public const string AskForOfferedWords = "the four words are taken; type them once, with spaces between, to show that you have them: ";
    public const string PublicIsForPlanFolder = "'--public' is for sealing away from the study; give the plan folder instead of the study";
    public const string PlanFolderNeedsPublic =
        "PLAN_DIR seals away from the study; add '--public FILE', the file that the crew takes into it";
    public const string GiveListOrEarlierKey = "give '--specs FILE --key KEYFILE', or '--paper' alone";
    public const string ListIsNotThatOfEarlierKey =
        "the list names other specs than the earlier key; leave '--specs' out, the names are in that key";
    public const string EarlierKeyIsOfAnotherStudy =
        "the earlier key belongs to another study; give the key of the fitting before this one";
    public const string EarlierKeyIsOfNoFitting =
        "the earlier key is not of any fitting of this study; give the key of the fitting before this one";
    public const string EarlierKeyKnowsNoOrder =
        "the earlier key was written by an earlier program and knows no order; seal in the study itself";
    public const string MarksNeedEarlierKey = "the sets have marks already; add '--after KEYFILE', the earlier key, so that they keep them";
    public const string SayFromRun = "say which run is the first on these tyres: '--from-run 4'";

    public static string FromRunIsOutOfOrder(int runs) => $"'--from-run' is a run of the order, 1 to {runs}";

    public static string OfferWords(OfferedWords offer) =>
        $"four words by lot, {Bits(offer.Bits)}: {offer}\n  write them down where the crew never looks, then Enter alone "
        + "takes them; or type a passphrase of your own";

    public static string Strength(double bits) =>
        bits < PassphraseStrength.WeakBits
            ? $"look out: this passphrase is weak, at most {Bits(bits)}; four words by lot have 52"
            : $"passphrase: at most {Bits(bits)}";

    private static string Bits(double bits) => $"about {Math.Round(bits):0} bits";

    /// <summary>What the custodian does after sealing, step by step.</summary>
    /// <param name="key">The key file.</param>
    /// <param name="specs">The list of specs; null: none was read.</param>
    /// <param name="publicFile">The file for the crew; null: sealed in the study.</param>
    /// <param name="study">The study file, as the crew names it.</param>
    public static IEnumerable<string> AfterSealing(string key, string? specs, string? publicFile, string study)
    {
        string[] steps =
        [
            "copy the commitment to paper for the crew",
            publicFile is null
                ? $"take {key} off the crew's laptop, and keep a second copy in another place"
                : $"keep a second copy of {key} in another place; neither ever goes to the crew",
            .. specs is null ? Array.Empty<string>() : [$"delete {specs}: the names are in the key"],
            .. publicFile is null
                ? Array.Empty<string>()
                : [$"give the crew {publicFile}, nothing else; they type: fieldsession codes {study} {publicFile}"],
            $"alone: fieldsession fitting {key}",
            "write each mark under the tape of its four tyres, then fit by the list",
            "before each run tell the crew the code on the car, nothing else",
            $"in the evening, after all predictions are locked, bring {key}; two people read the marks",
        ];
        return steps.Select((step, place) => $"  {place + 1}. {step}").Prepend("next, by the custodian:");
    }

    /// <summary>What comes after 'start'.</summary>
    public static IEnumerable<string> AfterStarting(string planFolder, string study) =>
        [
            "next:",
            $"  1. the custodian, on a laptop of their own: fieldsession seal {planFolder} --specs specs.txt --key a.key --public a.codes",
            $"  2. the crew, with that public file: fieldsession codes {study} a.codes",
            "  3. write the commitment on paper; the custodian says the code of each run",
            $"  4. fieldsession drive {study}",
        ];

    /// <summary>What comes after the codes were taken in.</summary>
    public static string AfterTakingCodes(string study) =>
        $"next: write the commitment on paper; when the custodian has said the code on the car: fieldsession drive {study}";

    // taking codes in
    public static string CodesAreOfAnotherStudy(string theirs, string ours) => $"these codes are for the study {theirs}, this is {ours}";

    public const string PlanWasChanged =
        "the plan of this study is not the one that the codes were sealed for: it was changed after sealing, or it is another plan";
    public const string SealAgainOrStartFromThatPlan = "let the custodian seal this plan, or start a study from the old plan";

    public static string CodesAreOfFitting(int theirs, int due) =>
        $"these codes are of fitting {theirs}, this study waits for fitting {due}";

    public const string TakeCodesOfNextFitting = "take the public file of the fitting that is on the car";

    // the list
    public const string CanCrewSeeScreen = "the list names the specs; can anybody in the crew see this screen? type 'alone' to go on: ";
    public const string Alone = "alone";
    public const string NotAlone = "nothing is shown; come back when nobody in the crew can see the screen";
    public const string NeedsFurtherWord =
        "the list names the specs, and standard output is not a terminal: '--print' prints it all the same, '--csv' as a "
        + "table, '--out FILE' writes a private sheet";
    public const string WhereOutputGoesIsUnknown = "the system does not say where that file is; use '--out FILE'";
    public const string OldKeyKnowsNoOrder =
        "This key was written by an earlier program: it knows codes and specs, not the order of the runs.";
    public const string LeaveOn = "leave all four on";
    public const string FitAll = "fit all four";
    public const string WipedAtTheEnd = "wiped when you leave";
    public const string KeysOnPage = " Enter next page  PgUp previous page  Esc leaves and wipes the screen";
    public const string KeysOnLastPage = " this is the last page  PgUp previous page  Esc leaves and wipes the screen";
    public const string TellTheCrew = "tell the crew this code, nothing else";
    public const string MarkFirst = "Write its mark under the tape of all four tyres of a set, before fitting.";
    public const string KeepSheetAway = "Names the specs: keep it where the crew can't find it. Cut off one slip for each run.";
    public const string AfterList =
        "the list is wiped from the screen\nnext: fit as it says; before each run tell the crew the code on the car, nothing else";
    public const string ListIsWritten = "the list names the specs: keep it where the crew never looks";

    public static string Title(KeySheet key) => key.Plan is { } plan ? $"{key.StudyName}  fitting {plan.Number}" : key.StudyName;

    public static string Run(FittingRow row, int runs) => $"run {row.Run} of {runs}{Car(row.Car)}";

    public static string OnTheCar(SetOnCar set) =>
        set.Spec is { } spec
            ? $"on the car now{Car(set.Car)}: {spec} (it was code {set.Code})"
            : $"on the car now{Car(set.Car)}: what was code {set.Code}; its mark, or the earlier key with '--earlier', says which set";

    public static string Change(FittingRow row) =>
        row.Change switch
        {
            FittingChange.LeaveOn => LeaveOn,
            FittingChange.FitAll => FitAll,
            FittingChange.LookAtMark => $"look at the mark on the car: {row.Line.UnderTape} stays on, another comes off",
            _ => $"change all four: {row.Before!.Spec} comes off",
        };

    public static string Slip(FittingRow row, int runs) => $"run {row.Run} of {runs}{Car(row.Car)}:  code {row.Line.Code}";

    public static string KeyIsNearStudy(string key, string why) => $"look out: {why}; move {key} to a place that the crew never opens";

    public static string Written(string path) => $"{path}: {ListIsWritten}";

    private static string Car(string? car) => car is null ? "" : $", car {car}";

    // the key check
    public static string KeyIsWhole(KeySheet key) =>
        "ok  the passphrase opens it, it is whole and gives its own commitment: study "
        + $"{key.StudyName}{(key.Plan is { } plan ? $", fitting {plan.Number}" : "")}, codes "
        + $"{string.Join(", ", key.Codes.Order(Comparer<SpecCode>.Create((a, b) => string.CompareOrdinal(a.Digits, b.Digits))))}";

    public static string KeyIsOfFitting(string study, int fitting) => $"ok  it is the key of fitting {fitting} of {study}";

    public static string KeyIsOfNoFitting(string study) =>
        $"NO  it is not the key of any fitting of {study}: it gives none of its commitments";

    public static string KeyIsThatOfPublicFile(string path) => $"ok  it is the key of the codes in {path}";

    public static string KeyIsNotThatOfPublicFile(string path) => $"NO  the codes in {path} were sealed with another key";

    public static string CopyIsEqual(string path) => $"ok  {path} holds the same key";

    public static string CopyDiffers(string path) => $"NO  {path} holds another key";

    public static string CopyDoesNotOpen(string path, string why) => $"NO  {path}: {why}";
}

/// <summary>Words drawn by lot for a passphrase, out of a public list of 7776 (docs/licences.md).</summary>
/// <param name="Words">The words.</param>
/// <param name="Bits">How many bits somebody would have to guess.</param>
internal sealed record OfferedWords(ImmutableArray<string> Words, double Bits)
{
    private const int HowMany = 4;
    private const string ListName = "words.txt";

    /// <summary>Four words by lot.</summary>
    public static OfferedWords Drawn(ILot lot)
    {
        string[] list = List();
        return new OfferedWords(
            [.. Enumerable.Range(0, HowMany).Select(_ => list[lot.Below(list.Length)])],
            PassphraseStrength.BitsOfWords(HowMany, list.Length)
        );
    }

    /// <summary>The list.</summary>
    public static string[] List()
    {
        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream(ListName)
            ?? throw new FileNotFoundException($"{ListName} is not in the program", ListName);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', Words);
}
