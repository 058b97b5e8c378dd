using System.CommandLine;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'completion': prints the script by which a shell completes the program's words.</summary>
internal static class CompletionCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> shell = new("SHELL") { Description = "bash, zsh, fish or powershell" };
        shell.AcceptOnlyFromAmong([.. CompletionScripts.All.Select(one => one.Shell)]);
        Command command = new("completion", "prints the script by which a shell completes words") { shell };
        command.SetAction(typed =>
        {
            outside.Output.WriteLine(CompletionScripts.All.First(one => one.Shell == typed.GetRequiredValue(shell)).Script);
            return ExitCode.Done;
        });
        return command;
    }
}
