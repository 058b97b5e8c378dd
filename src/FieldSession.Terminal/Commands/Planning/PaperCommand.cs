using System.CommandLine;
using FieldSession.Store.Exports.Paper;
using FieldSession.Store.Planning;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'paper': sheets of a plan to print, for the day that the laptop's battery dies.</summary>
internal static class PaperCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> plan = new("PLAN_DIR") { Description = "folder with plan.toml and route.csv" };
        Option<string> folder = new("--out")
        {
            Description = "the folder to write paper.html into",
            HelpName = "DIR",
            Required = true,
        };
        Command command = new("paper", "sheets to print: route card, blank logs, ratings, predictions, checks") { plan, folder };
        command.SetAction(typed => Run(typed.GetRequiredValue(plan), typed.GetRequiredValue(folder), outside));
        return command;
    }

    /// <summary>Writes the sheets and prints their path.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string planFolder, string folder, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Read(planFolder);
        foreach (PlanProblem problem in reading.Problems)
        {
            outside.Error.WriteLine(problem);
        }

        if (reading.Plan is not { } plan)
        {
            return ExitCode.Wrong;
        }

        outside.Output.WriteLine(PaperSheets.Write(folder, plan));
        return ExitCode.Done;
    }
}
