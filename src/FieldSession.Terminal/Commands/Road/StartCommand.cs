using System.CommandLine;
using FieldSession.Archiving;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'start': makes a study file from a plan folder.</summary>
internal static class StartCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> folder = new("PLAN_DIR") { Description = "folder with plan.toml and route.csv" };
        Argument<string> study = new("STUDY") { Description = "the study file to make" };
        Command command = new("start", "makes a study from a plan folder") { folder, study };
        command.SetAction(typed => Run(typed.GetRequiredValue(folder), typed.GetRequiredValue(study), outside));
        return command;
    }

    /// <summary>Reads the plan and makes the study; nothing is made where the plan has a problem.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string folder, string path, Surroundings outside)
    {
        if (PlanIn(folder, outside) is not { } plan || !TryArchive(folder, plan, outside, out IReadOnlyList<ArchiveRow>? archive))
        {
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.New(path, outside);
        int code = Written(opened, plan, archive, outside);
        foreach (string step in code == ExitCode.Done ? CustodianWords.AfterStarting(folder, path) : [])
        {
            outside.Error.WriteLine(step);
        }

        return code;
    }

    /// <summary>
    /// Makes the study of a plan folder beside the plan and leaves it open; null: the plan has a problem, and it was said.
    /// </summary>
    public static OpenedStudy? Made(string folder, Surroundings outside)
    {
        if (PlanIn(folder, outside) is not { } plan || !TryArchive(folder, plan, outside, out IReadOnlyList<ArchiveRow>? archive))
        {
            return null;
        }

        OpenedStudy opened = OpenedStudy.New(PathIn(folder, plan), outside);
        if (Written(opened, plan, archive, outside) == ExitCode.Done)
        {
            return opened;
        }

        opened.Dispose();
        return null;
    }

    /// <summary>
    /// The study file that is made of a plan folder where nobody names one: the study's name, letters and figures of it, beside the plan.
    /// </summary>
    public static string PathIn(string folder, Plan plan) =>
        Path.Combine(folder, string.Concat(plan.StudyName.Select(c => char.IsLetterOrDigit(c) || c == '-' ? c : '_')) + ".study");

    private static int Written(OpenedStudy opened, Plan plan, IReadOnlyList<ArchiveRow>? archive, Surroundings outside)
    {
        int code = Answer.To(opened.Logbook.Write(new PlanMade(plan)), outside);
        if (code != ExitCode.Done || archive is null)
        {
            return code;
        }

        Outcome taken = opened.Logbook.Write(ArchiveCommand.Taken(plan.Archive!, opened.Logbook, archive));
        // an archive that has nothing of this crew and loop yet is no fault of the plan
        outside.Output.WriteLine(taken.IsWritten ? taken.Echo!.Words : $"archive {plan.Archive}: {ShellWords.NotWritten(taken)}");
        return taken.NotSavedBecause is null ? ExitCode.Done : ExitCode.Damaged;
    }

    private static bool TryArchive(string folder, Plan plan, Surroundings outside, out IReadOnlyList<ArchiveRow>? archive)
    {
        archive = plan.Archive is { } named ? ArchiveCommand.Rows(Path.Combine(folder, named), outside) : null;
        return plan.Archive is null || archive is not null;
    }

    /// <summary>The plan of a folder; null: it has a problem, and it was said.</summary>
    public static Plan? PlanIn(string folder, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Read(folder);
        foreach (PlanProblem problem in reading.Problems)
        {
            outside.Error.WriteLine(problem);
        }

        foreach (PlanProblem warning in reading.Plan is null ? [] : reading.Warnings)
        {
            outside.Error.WriteLine($"look out: {warning}");
        }

        return reading.Plan;
    }
}
