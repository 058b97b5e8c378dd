using System.CommandLine;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'rescue': saves what is whole of a damaged study as a new one and leaves the damaged files as they are.</summary>
internal static class RescueCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the damaged study file" };
        Option<string> target = new("--out")
        {
            Description = "the new study file to make",
            HelpName = "NEW",
            Required = true,
        };
        Command command = new("rescue", "saves what is whole of a damaged study as a new one") { study, target };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(target), outside));
        return command;
    }

    /// <summary>Saves the lines that are whole.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string damaged, string target, Surroundings outside)
    {
        StudyRescue rescue = StudyRescue.Of(damaged, target, outside.Clock);
        outside.Output.WriteLine($"{rescue.Path}: {rescue.Lines} lines are saved here; the damaged files were not touched");
        if (rescue.LooseFile is { } loose)
        {
            outside.Output.WriteLine($"{loose}: {rescue.LooseLines} lines after a lost one; read them and type in again what counts");
        }

        return ExitCode.Done;
    }
}
