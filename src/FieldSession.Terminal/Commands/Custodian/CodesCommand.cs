using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>The crew's command 'codes': takes codes and commitment, sealed by the custodian elsewhere, into the study.</summary>
internal static class CodesCommand
{
    /// <summary>How it is called.</summary>
    public const string Name = "codes";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Argument<string> file = new("FILE") { Description = "the public file that 'seal --public' wrote" };
        Command command = new(Name, "the crew's: takes codes and commitment, sealed away from the study, into it") { study, file };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(file), outside));
        return command;
    }

    /// <summary>Takes the codes in; nothing is written where they are not for this study as it is.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string path, string file, Surroundings outside)
    {
        if (!File.Exists(file))
        {
            outside.Error.WriteLine($"{file}: there is no such file; ask the custodian for the public file");
            return ExitCode.Wrong;
        }

        PublicCodesRead read = PublicCodesFile.Read(file);
        if (read.Codes is not { } codes)
        {
            outside.Error.WriteLine($"{file}: {read.Refusal}");
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.At(path, outside);
        if ((SpecsSealed.ObjectionNow(opened.Logbook.Study) ?? ObjectionTo(codes, opened.Logbook)) is { } against)
        {
            outside.Error.WriteLine($"{file}: {against}");
            return ExitCode.No;
        }

        int code = Answer.To(opened.Logbook.Write(new SpecsSealed(codes.Codes, codes.Commitment)), outside);
        if (code == ExitCode.Done)
        {
            outside.Output.WriteLine($"commitment {codes.Commitment}");
            outside.Error.WriteLine(CustodianWords.AfterTakingCodes(path));
        }

        return code;
    }

    private static Objection? ObjectionTo(PublicCodes codes, Logbook logbook)
    {
        Study study = logbook.Study;
        int due = study.Fittings.Count + 1;
        if (codes.StudyName != study.Plan!.StudyName)
        {
            return new Objection(
                CustodianWords.CodesAreOfAnotherStudy(codes.StudyName, study.Plan.StudyName),
                CustodianWords.TakeCodesOfNextFitting
            );
        }

        if (codes.Fitting != due)
        {
            return new Objection(CustodianWords.CodesAreOfFitting(codes.Fitting, due), CustodianWords.TakeCodesOfNextFitting);
        }

        return PlansOf(logbook).Any(plan => PlanDigest.Of(plan) == codes.PlanDigest)
            ? null
            : new Objection(CustodianWords.PlanWasChanged, CustodianWords.SealAgainOrStartFromThatPlan);
    }

    // Before run 1 the plan must be the one that was sealed; later amendments are in the journal, and the custodian may not know of them.
    private static IEnumerable<Plan> PlansOf(Logbook logbook) =>
        logbook.Study.Fittings.Count == 0
            ? [logbook.Study.Plan!]
            : [logbook.Study.Plan!, .. logbook.Entries.OfType<PlanMade>().Select(made => made.Plan)];
}
