using System.CommandLine;
using System.Diagnostics;
using System.Text;
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
        Option<string?> levels = new("--levels")
        {
            Description = "a command that prints one level a line, or a named pipe: the range is then held ready",
            HelpName = "COMMAND",
        };
        Command command = new("drive", "opens the drive screen") { study, backup, levels };
        command.SetAction(typed =>
            UsersOwn.Show(
                outside,
                own =>
                {
                    using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside, typed.GetValue(backup));
                    new RecentFile(outside.StateFolder).Remember(typed.GetRequiredValue(study));
                    using LevelSource? source = typed.GetValue(levels) is { } command ? LevelSource.Of(command, outside.Clock) : null;
                    return OpenScreens(
                        opened,
                        own,
                        outside,
                        Path.GetDirectoryName(Path.GetFullPath(typed.GetRequiredValue(study)))!,
                        levels: source?.Levels
                    );
                }
            )
        );
        return command;
    }

    /// <summary>Opens the screens on a study.</summary>
    /// <param name="opened">The study.</param>
    /// <param name="own">The keys and habits of the user.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="folder">Where the report goes.</param>
    /// <param name="screen">Name of the screen to begin with.</param>
    /// <param name="levels">A stream of levels; null: there is none.</param>
    /// <param name="keyOfDemo">What opens the key of a demo; null: no demo.</param>
    /// <returns>An exit code.</returns>
    public static int OpenScreens(
        OpenedStudy opened,
        UsersOwn own,
        Surroundings outside,
        string folder,
        string screen = ScreenName.Drive,
        StreamedLevels? levels = null,
        string? keyOfDemo = null
    ) =>
        TerminalProgram.Run(
            DeskOf(opened, outside, folder) with
            {
                Keys = own.Keys,
                Letters = own.Habits.Letters,
                Levels = levels,
                KeyOfDemo = keyOfDemo,
            },
            screen
        );

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
            OpenKey = (path, passphrase, ring) => Tried(path, passphrase, opened.Logbook.Study, ring, outside.KeyFile),
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
            : new KeyTried(
                null,
                opening.Words,
                opening.Fault == KeyFault.WrongPassphraseOrChanged,
                opening.Fault == KeyFault.NeedsTwoPassphrases
            );
    }
}

/// <summary>
/// A program of the user's that prints levels, or a named pipe that one writes into. It is read on a thread of its own; what it says on its
/// message stream goes nowhere, and with this program it ends.
/// </summary>
internal sealed class LevelSource : IDisposable
{
    private const int LongestLine = 400;
    private readonly TimeProvider _clock;
    private readonly Process? _program;

    private LevelSource(TimeProvider clock, Process? program, Func<TextReader> open)
    {
        _clock = clock;
        _program = program;
        Thread reading = new(() => Read(open)) { IsBackground = true, Name = "levels" };
        reading.Start();
    }

    /// <summary>The levels.</summary>
    public StreamedLevels Levels { get; } = new();

    /// <summary>Starts a source; one that can't be started has ended.</summary>
    /// <param name="command">A command line, or the path of a named pipe.</param>
    /// <param name="clock">Where the time comes from.</param>
    public static LevelSource Of(string command, TimeProvider clock)
    {
        if (File.Exists(command) && !File.GetAttributes(command).HasFlag(FileAttributes.Directory) && IsPipe(command))
        {
            // opening waits until somebody writes, so that is the thread's to do
            return new(clock, null, () => new StreamReader(new FileStream(command, FileMode.Open, FileAccess.Read, FileShare.ReadWrite)));
        }

        Process? program = UsersProgram.Start(command);
        return new(clock, program, () => program is null ? TextReader.Null : program.StandardOutput);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        UsersProgram.End(_program);
        _program?.Dispose();
    }

    private static bool IsPipe(string path) => OperatingSystem.IsWindows() || (File.GetUnixFileMode(path) & UnixFileMode.UserExecute) == 0;

    private void Read(Func<TextReader> open)
    {
        try
        {
            using TextReader reader = open();
            StringBuilder line = new();
            for (int next = reader.Read(); next >= 0; next = reader.Read())
            {
                if (next == '\n')
                {
                    Levels.Take(line.ToString(), _clock.GetUtcNow());
                    line.Clear();
                }
                else if (line.Length < LongestLine)
                {
                    line.Append((char)next);
                }
            }
        }
        catch (Exception broken)
            when (broken is IOException or UnauthorizedAccessException or ObjectDisposedException or InvalidOperationException)
        {
            // a source that breaks off has ended
        }

        Levels.End();
    }
}
