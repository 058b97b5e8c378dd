using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Store.Planning;

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
        PlanReading reading = PlanFolder.Read(folder);
        foreach (PlanProblem problem in reading.Problems)
        {
            outside.Error.WriteLine(problem);
        }

        if (reading.Plan is not { } plan)
        {
            return ExitCode.Wrong;
        }

        foreach (PlanProblem warning in reading.Warnings)
        {
            outside.Error.WriteLine($"look out: {warning}");
        }

        using OpenedStudy opened = OpenedStudy.New(path, outside);
        Outcome outcome = opened.Logbook.Write(new PlanMade(plan));
        return Answer.To(outcome, outside);
    }
}
