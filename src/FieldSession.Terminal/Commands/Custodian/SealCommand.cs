using System.Collections.Immutable;
using System.CommandLine;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'seal'.</summary>
/// <param name="Study">The study file, or the plan folder where it is sealed away from the study.</param>
/// <param name="Specs">The custodian's list; null: a paper key, or the names of the earlier key.</param>
/// <param name="Key">The key file to write; null: a paper key.</param>
/// <param name="IsPaper">Whether the custodian keeps the key on paper.</param>
internal sealed record SealWords(string Study, string? Specs, string? Key, bool IsPaper)
{
    /// <summary>The public file to write for the crew; null: the codes go into the study at once.</summary>
    public string? Public { get; init; }

    /// <summary>The key of the fitting before this one; null: not given.</summary>
    public string? After { get; init; }

    /// <summary>The first run on these tyres, from 1; null: the next one.</summary>
    public int? FromRun { get; init; }

    /// <summary>Whether marks are drawn by lot, instead of the specs' names.</summary>
    public bool DrawMarks { get; init; }

    /// <summary>Whether two people hold the key, each with a passphrase.</summary>
    public bool IsOfTwo { get; init; }
}

/// <summary>
/// The custodian's command 'seal': draws the codes of a fitting by lot and locks the key away, or leaves the key to the
/// custodian's paper. It never says a spec's name.
/// </summary>
internal static class SealCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY")
        {
            Description = "the study file; or the plan folder, with --public, to seal away from the study",
        };
        Option<string?> specs = new("--specs") { Description = "file with one spec name a line, the control first", HelpName = "FILE" };
        Option<string?> key = new("--key") { Description = "the key file to write; keep it away from the crew", HelpName = "KEYFILE" };
        Option<string?> codes = new("--public")
        {
            Description = "sealed away from the study: the file of codes and commitment for the crew",
            HelpName = "FILE",
        };
        Option<string?> after = new("--after")
        {
            Description = "after a re-fit: the key of the fitting before; then the list of specs may be left out",
            HelpName = "KEYFILE",
        };
        Option<int?> fromRun = new("--from-run")
        {
            Description = "away from the study, after a re-fit: the first run on these tyres",
            HelpName = "N",
        };
        Option<bool> marks = new("--draw-marks")
        {
            Description =
                "draws the marks under the tape by lot, so that a glimpse gives nothing away; otherwise each spec's name is its mark",
        };
        Option<bool> two = new("--two-people")
        {
            Description = "two people hold the key, each with a passphrase; both are needed to open it",
        };
        Option<bool> paper = new("--paper")
        {
            Description = "no key file: the custodian writes the key on paper, and there is no commitment",
        };
        Command command = new(
            "seal",
            "the custodian's: draws codes by lot and writes the encrypted key file; again where new codes are wanted"
        )
        {
            study,
            specs,
            key,
            codes,
            after,
            fromRun,
            marks,
            two,
            paper,
        };
        command.SetAction(typed =>
            Run(
                new SealWords(typed.GetRequiredValue(study), typed.GetValue(specs), typed.GetValue(key), typed.GetValue(paper))
                {
                    Public = typed.GetValue(codes),
                    After = typed.GetValue(after),
                    FromRun = typed.GetValue(fromRun),
                    DrawMarks = typed.GetValue(marks),
                    IsOfTwo = typed.GetValue(two),
                },
                outside
            )
        );
        return command;
    }

    /// <summary>Seals a fitting, in the study or away from it.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(SealWords words, Surroundings outside)
    {
        bool isAway = Directory.Exists(words.Study);
        if (WhyNot(words, isAway) is { } why)
        {
            outside.Error.WriteLine($"seal: {why}");
            return ExitCode.Wrong;
        }

        try
        {
            return isAway ? SealAway.Run(words, outside) : InStudy(words, outside);
        }
        catch (InvalidOperationException noneLeft)
        {
            outside.Error.WriteLine(noneLeft.Message);
            return ExitCode.No;
        }
    }

    /// <summary>Writes the key file, then puts codes and commitment into the study.</summary>
    /// <returns>An exit code.</returns>
    public static int Seal(Logbook logbook, KeySheet key, string keyPath, string passphrase, Surroundings outside)
    {
        SpecsSealed fact = new(key.Codes, Commitment.Of(key));
        if (fact.ObjectionIn(logbook.Study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        KeyFile keyFile = outside.KeyFile;
        if ((KeyFile.ObjectionTo(keyPath, passphrase) ?? keyFile.Seal(keyPath, key, passphrase)) is { } refused)
        {
            outside.Error.WriteLine(refused);
            return ExitCode.Wrong;
        }

        int code = Answer.To(logbook.Write(fact), outside);
        if (code == ExitCode.Done)
        {
            outside.Output.WriteLine($"commitment {fact.Commitment}");
        }

        return code;
    }

    /// <summary>Tells the custodian what to do next.</summary>
    public static void SayNext(SealWords words, Surroundings outside)
    {
        string study = words.Public is null ? words.Study : "STUDY";
        foreach (string step in CustodianWords.AfterSealing(words.Key!, words.Specs, words.Public, study))
        {
            outside.Error.WriteLine(step);
        }
    }

    private static string? WhyNot(SealWords words, bool isAway) =>
        words switch
        {
            { IsPaper: true } => words
                is { Specs: null, Key: null, Public: null, After: null, FromRun: null, DrawMarks: false, IsOfTwo: false }
            && !isAway
                ? null
                : CustodianWords.GiveListOrEarlierKey,
            { Key: null } or { Specs: null, After: null } => CustodianWords.GiveListOrEarlierKey,
            { Public: null } when isAway => CustodianWords.PlanFolderNeedsPublic,
            { Public: not null } or { FromRun: not null } when !isAway => CustodianWords.PublicIsForPlanFolder,
            _ => null,
        };

    private static int InStudy(SealWords words, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.At(words.Study, outside);
        if (SpecsSealed.ObjectionNow(opened.Logbook.Study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        return words.IsPaper ? OnPaper(opened.Logbook, outside) : InFile(opened.Logbook, words, outside);
    }

    private static int InFile(Logbook logbook, SealWords words, Surroundings outside)
    {
        Study study = logbook.Study;
        KeyMaking making = new(words, outside);
        int code = making.OpenEarlier(study.Plan!.StudyName);
        if (code != ExitCode.Done)
        {
            return code;
        }

        if (making.Earlier is { } earlier && !study.Commitments.Contains(Commitment.Of(earlier)))
        {
            outside.Error.WriteLine($"{words.After}: {CustodianWords.EarlierKeyIsOfNoFitting}");
            return ExitCode.No;
        }

        code = making.Draw(study.Plan, DayOf(study, making.Earlier), out KeySheet? key);
        code = key is null ? code : Seal(logbook, key, words.Key!, making.Passphrase, outside);
        if (code == ExitCode.Done)
        {
            SayNext(words, outside);
        }

        return code;
    }

    // Brackets that are driven again make the order longer than the plan's.
    private static FittingPlan DayOf(Study study, KeySheet? earlier)
    {
        Plan plan = study.Plan!;
        int[] steps = [.. study.Steps ?? [.. Enumerable.Range(0, plan.Order.Count)]];
        IEnumerable<SetOnCar> onCars = study
            .Runs.GroupBy(run => run.Car ?? "")
            .Select(car => car.Last())
            .Select(run => new SetOnCar(run.Car, run.Code, earlier?.Places.FirstOrDefault(line => line.Code == run.Code)?.Spec));
        return new FittingPlan(
            study.Fittings.Count + 1,
            PlanDigest.Of(plan),
            [.. steps.Select(step => plan.Order[step])],
            plan.CarOrder is { } cars ? [.. steps.Select(step => cars[step])] : null
        )
        {
            FirstRun = study.NextTurn() + 1,
            EarlierCodes = [.. study.Codes],
            OnCars = [.. onCars],
        };
    }

    private static int OnPaper(Logbook logbook, Surroundings outside)
    {
        Study study = logbook.Study;
        ImmutableList<SpecCode> codes = [.. CodeLot.Draw(study.Plan!.SpecCount, [.. study.Codes], outside.Lot)];
        int code = Answer.To(logbook.Write(new SpecsSealed(codes, null)), outside);
        if (code != ExitCode.Done)
        {
            return code;
        }

        outside.Output.WriteLine($"codes in the order of a lot: {string.Join(" ", CodeLot.Shuffled(codes, outside.Lot))}");
        outside.Error.WriteLine(
            "write the specs on paper in any order of your own, these codes beside them, and show it to nobody; there is no "
                + "commitment, and the report says so"
        );
        return code;
    }
}
