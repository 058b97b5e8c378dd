using System.CommandLine;
using FieldSession.Aligning;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'drive': the terminal program on the drive screen.</summary>
internal static class DriveCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> backup = EnterCommand.Backup();
        Option<string?> levels = new("--levels") { Description = "a command that prints one level a line, or a named pipe: the range is then held ready", HelpName = "COMMAND" };
        Command command = new("drive", "opens the drive screen") { study, backup, levels };
        command.SetAction(typed => UsersOwn.Show(outside, own =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside, typed.GetValue(backup));
            new RecentFile(outside.StateFolder).Remember(typed.GetRequiredValue(study));
            using LevelSource? source = typed.GetValue(levels) is { } command ? LevelSource.Of(command, outside.Clock) : null;
            return OpenScreens(opened, own, outside, Path.GetDirectoryName(Path.GetFullPath(typed.GetRequiredValue(study)))!, levels: source?.Levels);
        }));
        return command;
    }

    /// <summary>Opens the screens on a study.</summary>
    /// <param name="opened">The study.</param>
    /// <param name="own">The keys and habits of the user.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="folder">Where the report goes.</param>
    /// <param name="screen">Name of the screen to begin with.</param>
    /// <param name="levels">A stream of levels; null: there is none.</param>
    /// <returns>An exit code.</returns>
    public static int OpenScreens(
        OpenedStudy opened, UsersOwn own, Surroundings outside, string folder, string screen = ScreenName.Drive, StreamedLevels? levels = null) =>
        TerminalProgram.Run(DeskOf(opened, outside, folder) with { Keys = own.Keys, Letters = own.Habits.Letters, Levels = levels }, screen);

    /// <summary>What the screens may use, with the keys as delivered.</summary>
    /// <param name="opened">The study.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="folder">Where the report goes.</param>
    public static Desk DeskOf(OpenedStudy opened, Surroundings outside, string folder)
    {
        SightFile file = new(outside.StateFolder);
        UsersSight sight = file.Sight;
        return new Desk
        {
            Logbook = opened.Logbook,
            Clock = outside.Clock,
            Trouble = opened.TakeTrouble,
            Palette = sight.PaletteFor(Environment.GetEnvironmentVariable("NO_COLOR")),
            Sight = sight,
            RememberSight = file.Remember,
            Cover = new Cover(sight.IsCovered),
            OpenKey = (path, passphrase, ring) => Tried(path, passphrase, opened.Logbook.Study, ring, new KeyFile(outside.Lot)),
            TwoPassphrases = TwoPassphrases.Joined,
            WriteReport = () => ReportCommand.Write(opened.Logbook, folder),
            Version = ReportCommand.ProgramVersion,
        };
    }

    /// <summary>Tries a key file on a study.</summary>
    public static KeyTried Tried(string path, string passphrase, Study study, KeyRing ring, KeyFile file)
    {
        KeyOpening opening = file.OpenOneOf(path, study.Plan!.StudyName, [.. study.Commitments], passphrase);
        return opening.Key is { } key
            ? new KeyTried(ring.With(key), "", AskAgain: false)
            : new KeyTried(null, opening.Words, opening.Fault == KeyFault.WrongPassphraseOrChanged, opening.Fault == KeyFault.NeedsTwoPassphrases);
    }
}
