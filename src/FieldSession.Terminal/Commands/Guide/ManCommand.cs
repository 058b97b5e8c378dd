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

/// <summary>The manual page in the macros of man(7).</summary>
internal static class ManPage
{
    private static (string Name, string Words)[] Variables =>
        [
            ("FIELDSESSION_PASSPHRASE", CommandWords.PassphraseVariable),
            ("FIELDSESSION_PASSPHRASE_2", CommandWords.SecondPassphraseVariable),
            ("NO_COLOR", CommandWords.NoColourVariable),
            ("XDG_STATE_HOME", CommandWords.StateFolderVariable),
            ("XDG_CONFIG_HOME", CommandWords.ConfigFolderVariable),
        ];

    private static (string Name, string Words)[] Files =>
        [
            ("NAME.study, NAME.journal", CommandWords.StudyFiles),
            ("plan.toml, route.csv", "a plan folder."),
            ("$XDG_STATE_HOME/fieldsession/recent", CommandWords.RecentStudiesFile),
            ("$XDG_STATE_HOME/fieldsession/acknowledged/", CommandWords.AcknowledgedFiles),
            ("$XDG_STATE_HOME/fieldsession/*.unsaved", CommandWords.UnsavedFiles),
            ("$XDG_CONFIG_HOME/fieldsession/keys", CommandWords.OwnKeysFile),
        ];

    /// <summary>The lines of the page.</summary>
    /// <param name="root">All commands.</param>
    /// <param name="version">Version of the program.</param>
    public static IEnumerable<string> Of(RootCommand root, string version) =>
        [
            $".TH FIELDSESSION 1 \"\" \"fieldsession {Plain(version)}\"",
            ".SH NAME",
            CommandWords.ManPageName,
            ".SH SYNOPSIS",
            ".B fieldsession",
            ".br",
            ".B fieldsession",
            ".I COMMAND",
            "[\\fIwords\\fR]",
            ".SH DESCRIPTION",
            Plain(root.Description),
            CommandWords.WithoutACommand,
            CommandWords.WhereOutputGoes,
            ".SH COMMANDS",
            .. root.Subcommands.SelectMany(Command),
            ".SH EXIT STATUS",
            .. ExitCode.Meanings.SelectMany(Tagged),
            ".SH ENVIRONMENT",
            .. Variables.SelectMany(Tagged),
            ".SH FILES",
            .. Files.SelectMany(Tagged),
        ];

    private static IEnumerable<string> Command(Command command) =>
        [
            ".SS " + Plain($"fieldsession {string.Join(' ', command.Arguments.Select(Usage).Prepend(command.Name))}"),
            Plain(command.Description),
            .. command.Arguments.SelectMany(argument => Tagged((argument.Name, argument.Description ?? ""))),
            .. CommandGuide.Of(command.Name) is { } guide ? Tagged(("example", guide.Example)) : [],
            .. command
                .Options.Where(option => option.Name != "--help")
                .SelectMany(option => Tagged((Usage(option), option.Description ?? ""))),
        ];

    private static string Usage(Argument argument)
    {
        string name = argument.Arity.MaximumNumberOfValues > 1 ? $"{argument.Name}..." : argument.Name;
        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{name}]" : name;
    }

    private static string Usage(Option option) => option.HelpName is { } value ? $"{option.Name} {value}" : option.Name;

    private static string[] Tagged((string Name, string Words) row) => [".TP", $"\\fB{Plain(row.Name)}\\fR", Plain(row.Words)];

    // A minus is written as one, so that it can be copied; a line that begins with a point or an apostrophe would be a macro.
    private static string Plain(string? words)
    {
        string safe = (words ?? "").Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return safe.StartsWith('.') || safe.StartsWith('\'') ? $"\\&{safe}" : safe;
    }
}
