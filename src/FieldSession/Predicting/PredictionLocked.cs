using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>One person has said what they hold to be behind the codes. It can't be changed; with the first one the data freeze.</summary>
/// <param name="Person">Who says it.</param>
/// <param name="Feature">The code that they hold to have the hidden feature.</param>
/// <param name="Sure">How sure, 1 (a guess) to 5 (certain).</param>
/// <param name="Quieter">The code that they hold to be quieter; null: no opinion.</param>
/// <param name="WouldPay">Whether they would pay for the feature; null: no opinion.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="Words">More in their own words; null: none.</param>
/// <param name="SurePercent">How sure as it was said in per cent, 1..100; null: it was said in steps.</param>
public sealed record PredictionLocked(
    string Person,
    SpecCode Feature,
    int Sure,
    SpecCode? Quieter,
    bool? WouldPay,
    PredictionBasis Basis,
    string? Words,
    int? SurePercent = null
) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return EveningGate.ObjectionIn(study, new Objection(PredictingWords.KeyIsOpen, PredictingWords.PredictionComesBeforeKey))
            ?? ObjectionToDay(study)
            ?? ObjectionToPerson(study)
            ?? ObjectionToCodes(study);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Prediction prediction = new(Person, Feature, Sure, Quieter, WouldPay, Basis, Words, mark) { SurePercent = SurePercent };
        return study with { Predictions = study.Predictions.Add(prediction), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string[] open = [.. after.StillToPredict.Select(m => m.Name)];
        return new Echo(
            open.Length == 0
                ? PredictingWords.LastPredictionLocked(Person)
                : PredictingWords.PredictionLockedAndHidden(Person, string.Join(", ", open))
        );
    }

    /// <summary>What forbids every prediction now, whoever makes it; null: nothing.</summary>
    public static Objection? ObjectionToDay(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        SpecCode[] undriven = [.. UndrivenIn(study)];
        return !study.IsAnythingDriven || undriven.Length > 0
            ? new Objection(
                !study.IsAnythingDriven ? JournalWords.NothingHasBeenDriven : PredictingWords.CodesNotDriven(string.Join(", ", undriven)),
                PredictingWords.DriveEveryCodeFirst
            )
            : RunChecks.AgainstPredicting(study);
    }

    // After a re-fit the day may end before each of the new codes was driven: one whole fitting is enough.
    private static IEnumerable<SpecCode> UndrivenIn(Study study)
    {
        HashSet<SpecCode> driven = [.. study.DrivenCodes];
        return study.Fittings.Any(fitting => fitting.Codes.All(driven.Contains)) ? [] : study.Codes.Where(code => !driven.Contains(code));
    }

    private Objection? ObjectionToPerson(Study study)
    {
        if (!study.Plan!.Crew.Any(m => CrewMember.SamePerson(m.Name, Person)))
        {
            return new Objection(
                JournalWords.IsNotInCrew(Person),
                JournalWords.CrewIs(string.Join(", ", study.Plan.Crew.Select(m => m.Name)))
            );
        }

        return study.Predictions.Any(p => CrewMember.SamePerson(p.Person, Person))
            ? new Objection(PredictingWords.HasLockedPredictionAlready(Person), PredictingWords.ItCantBeChanged)
            : null;
    }

    private Objection? ObjectionToCodes(Study study)
    {
        if (Sure is < 1 or > PredictionScale.Steps || SurePercent is < 1 or > 100)
        {
            return new Objection(
                PredictingWords.DoesNotSayHowSure(SurePercent is { } percent ? $"{percent} %" : $"{Sure}"),
                PredictingWords.GiveStepOrPercent
            );
        }

        SpecCode[] codes = [.. study.DrivenCodes];
        SpecCode? stranger =
            !codes.Contains(Feature) ? Feature
            : Quieter is { } quieter && !codes.Contains(quieter) ? quieter
            : null;
        return stranger is { } code
            ? new Objection(PredictingWords.NoDrivenCode(code), JournalWords.CodesAre(string.Join(", ", codes)))
            : null;
    }
}

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
    public static string PredictionForm(ExampleNames own) =>
        $"type 'predict {own.Person} feature={own.Code} sure=3 quieter={own.Other} pay=no because=sound words'";

    public const string WhatPredictionNames = "a prediction names the person, the code of the new spec, and how sure";
    public const string FeatureCodeMissing = "feature= is missing or not a three-digit code";
    public const string HowSureIsTyped = "how sure is 1 (a guess) to 5 (certain), or per cent such as 80%";
    public const string PayIsYesOrNo = "'pay' is yes or no";
    public const string BecauseIsTyped = "'because' is sound, seen or guess";

    public static string NoPartOfPrediction(string part) => $"'{part}' is not a part of a prediction";

    public static string NoThreeDigitCode(string typed) => $"'{typed}' is not a three-digit code";

    // What is said of a locked one
    public static string LastPredictionLocked(string person) => $"prediction of {person} locked; all are locked, the key can be opened";

    public static string PredictionLockedAndHidden(string person, string stillOpen) =>
        $"prediction of {person} locked and hidden; still open: {stillOpen}";
}

/// <summary>What predictions and the reveal share: both wait until nothing is driven and nothing is in dispute.</summary>
internal static class EveningGate
{
    /// <summary>What rules out the evening now; null: nothing.</summary>
    /// <param name="study">The study.</param>
    /// <param name="onceOpen">What is said once the key is open.</param>
    public static Objection? ObjectionIn(Study study, Objection onceOpen) =>
        Gate.ForWriting(study)
        ?? study switch
        {
            { Opening: not null } => onceOpen,
            _ when study.Runs.Find(run => run.IsOn) is { } run => new Objection(
                PredictingWords.RunIsStillOn(run),
                PredictingWords.EndRunFirst
            ),
            _ when study.Unsettled.Any() => new Objection(PredictingWords.LaptopsAreInConflict, PredictingWords.SettleConflictFirst),
            _ => null,
        };
}
