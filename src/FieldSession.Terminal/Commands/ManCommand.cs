using System.CommandLine;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'man': prints the manual page, made from the same words as the help of the commands.</summary>
internal static class ManCommand
{
    /// <summary>The command as the command line takes it.</summary>
    /// <param name="outside">The world outside.</param>
    /// <param name="root">Gives all commands.</param>
    public static Command Make(Surroundings outside, Func<RootCommand> root)
    {
        Command command = new("man", "prints the manual page");
        command.SetAction(_ =>
        {
            foreach (string line in ManPage.Of(root(), ReportCommand.ProgramVersion))
            {
                outside.Output.WriteLine(line);
            }

            return ExitCode.Done;
        });
        return command;
    }
}
