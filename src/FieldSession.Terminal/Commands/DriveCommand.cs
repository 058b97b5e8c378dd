using System.CommandLine;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'drive': the terminal program on the drive screen.</summary>
internal static class DriveCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Command command = new("drive", "opens the drive screen") { study };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside);
            return TerminalProgram.Run(OnDesk(opened.Logbook, outside), "drive");
        });
        return command;
    }

    private static Desk OnDesk(Logbook logbook, Surroundings outside) => new()
    {
        Logbook = logbook,
        Clock = outside.Clock,
        Palette = Palette.For(Environment.GetEnvironmentVariable("NO_COLOR")),
    };
}
