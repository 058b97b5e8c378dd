using System.CommandLine;
using FieldSession.Store.Exports;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'export': every table of a study as CSV, with a Data Package descriptor.</summary>
internal static class ExportCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> folder = new("--out")
        {
            Description = "the folder to write into",
            Required = true,
            HelpName = "DIR",
        };
        Command command = new("export", "every table as CSV, with datapackage.json") { study, folder };

        // on a thread of its own, so that Ctrl-C is heard while it writes
        command.SetAction(
            (typed, stop) =>
                Task.Run(() => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(folder), outside, stop), CancellationToken.None)
        );
        return command;
    }

    /// <summary>Writes the export and prints the paths of its files, one a line.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string path, string folder, Surroundings outside, CancellationToken stop)
    {
        if (File.Exists(folder))
        {
            outside.Error.WriteLine($"--out {folder}: this is a file; give a folder to write into");
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.ToRead(path, outside);
        try
        {
            ExportOutcome outcome = ExportFolder.Write(folder, ExportSource.Of(opened.Logbook), stop);
            foreach (string written in outcome.Written)
            {
                outside.Output.WriteLine(written);
            }

            foreach (string leftOut in outcome.LeftOut)
            {
                outside.Error.WriteLine($"left out: {leftOut}");
            }

            return ExitCode.Done;
        }
        catch (OperationCanceledException)
        {
            outside.Error.WriteLine($"{folder}: stopped; nothing was changed there");
            return ExitCode.No;
        }
    }
}
