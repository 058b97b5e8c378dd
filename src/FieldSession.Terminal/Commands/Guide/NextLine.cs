using System.CommandLine;
using System.CommandLine.Parsing;
using System.Reflection;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The last line of a command on a study: what is due in it now, and the command that does it. Only a person at a terminal is told.
/// </summary>
internal static class NextLine
{
    private const string StudyWord = "STUDY";

    /// <summary>Says it, where the command is on a study that can be read.</summary>
    public static void Say(CommandResult command, Surroundings outside)
    {
        if (!outside.HasTerminal || CommandGuide.Of(command.Command.Name) is not { Next: null } || StudyIn(command) is not { } path)
        {
            return;
        }

        try
        {
            if (DayAhead.Of(Logbook.Fold(StudyGlance.LinesOf(path))) is { } ahead && After(command.Command.Name, ahead, path) is { } line)
            {
                outside.Error.WriteLine(line);
            }
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            // the command itself has told what there is to tell
        }
    }

    /// <summary>The line behind a command; null: nothing is due but the same again.</summary>
    /// <param name="command">The command that was done.</param>
    /// <param name="ahead">What is due in the study.</param>
    /// <param name="path">The study.</param>
    public static string? After(string command, DayAhead ahead, string path) =>
        command switch
        {
            CodesCommand.Name => null,
            ScreenName.Review when ahead.Command == ScreenName.Review => CommandWords.Next(
                CommandWords.LockPredictions,
                $"{ScreenName.Predict} {path}"
            ),
            ScreenName.Report => CommandWords.Next(CommandWords.KeepTables, $"export {path} --out tables"),
            _ when ahead.Command == command => null,
            _ => CommandWords.Next(ahead.Next, Words(ahead.Command, path)),
        };

    private static string Words(string command, string path) =>
        command switch
        {
            CodesCommand.Name => $"{command} {path} a.codes",
            ScreenName.Reveal => $"{command} {path} --key a.key",
            ScreenName.Report => $"{command} {path} --out report",
            _ => $"{command} {path}",
        };

    private static string? StudyIn(CommandResult command) =>
        command.Command.Arguments.OfType<Argument<string>>().FirstOrDefault(argument => argument.Name == StudyWord) is { } study
            ? command.GetValue(study)
            : null;
}

/// <summary>The command 'licences': prints the notices of the packages that the program carries along.</summary>
internal static class LicencesCommand
{
    private const string Notices = "licences.md";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Command command = new("licences", "prints the licence notices of the packages in the program");
        command.SetAction(_ =>
        {
            using Stream stream =
                Assembly.GetExecutingAssembly().GetManifestResourceStream(Notices)
                ?? throw new FileNotFoundException($"{Notices} is not in the program", Notices);
            using StreamReader reader = new(stream);
            outside.Output.Write(reader.ReadToEnd());
            return ExitCode.Done;
        });
        return command;
    }
}
