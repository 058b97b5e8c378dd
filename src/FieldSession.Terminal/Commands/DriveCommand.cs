using System.CommandLine;
using FieldSession.Store.Sealing;
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
            return OpenScreens(opened, outside, Path.GetDirectoryName(Path.GetFullPath(typed.GetRequiredValue(study)))!);
        });
        return command;
    }

    /// <summary>Opens the screens on a study.</summary>
    /// <param name="opened">The study.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="folder">Where the report goes.</param>
    /// <returns>An exit code.</returns>
    public static int OpenScreens(OpenedStudy opened, Surroundings outside, string folder) => TerminalProgram.Run(
        new Desk
        {
            Logbook = opened.Logbook,
            Clock = outside.Clock,
            Palette = Palette.For(Environment.GetEnvironmentVariable("NO_COLOR")),
            OpenKey = (path, passphrase) => new KeyFile(outside.Lot).Open(
                path, opened.Logbook.Study.Plan!.StudyName, opened.Logbook.Study.Fitting?.Commitment, passphrase),
            WriteReport = () => ReportCommand.Write(opened.Logbook, folder),
        },
        "drive");
}
