using System.CommandLine;

namespace FieldSession.Terminal.Commands;

/// <summary>The manual page in the macros of man(7).</summary>
internal static class ManPage
{
    private static (string Name, string Words)[] Variables =>
    [
        ("FIELDSESSION_PASSPHRASE", "the passphrase of the key file, for seal and reveal; without it it is asked for."),
        ("NO_COLOR", "set to anything: no colours."),
        ("XDG_STATE_HOME", "where the list of recent studies lies; else ~/.local/state."),
        ("XDG_CONFIG_HOME", "where keys of your own lie; else ~/.config."),
    ];

    private static (string Name, string Words)[] Files =>
    [
        ("NAME.study, NAME.journal", "a study: a LiteDB file and the same lines as text. Either brings the other back."),
        ("plan.toml, route.csv", "a plan folder."),
        ("$XDG_STATE_HOME/fieldsession/recent", "paths of the studies opened last, nothing of what stands in them."),
        ("$XDG_CONFIG_HOME/fieldsession/keys", "keys of your own."),
    ];

    private static (string Name, string Words)[] Codes =>
    [
        ($"{ExitCode.Done}", "done."),
        ($"{ExitCode.No}", "the answer is no: a rule stands against it, a check failed, some lines were refused."),
        ($"{ExitCode.Wrong}", "the words or the input are wrong; what, where and what to do is said."),
        ($"{ExitCode.Damaged}", "a file is damaged, locked or can't be written; nothing was overwritten."),
    ];

    /// <summary>The lines of the page.</summary>
    /// <param name="root">All commands.</param>
    /// <param name="version">Version of the program.</param>
    public static IEnumerable<string> Of(RootCommand root, string version) =>
    [
        $".TH FIELDSESSION 1 \"\" \"fieldsession {Plain(version)}\"",
        ".SH NAME",
        "fieldsession \\- blind comparison of tyre specs on the road",
        ".SH SYNOPSIS",
        ".B fieldsession",
        ".br",
        ".B fieldsession",
        ".I COMMAND",
        "[\\fIwords\\fR]",
        ".SH DESCRIPTION",
        Plain(root.Description),
        "Without a command, at a terminal, the start screen opens: recent studies, a new one, the demo.",
        "Data go to standard output, messages to standard error.",
        ".SH COMMANDS",
        .. root.Subcommands.SelectMany(Command),
        ".SH EXIT STATUS",
        .. Codes.SelectMany(Tagged),
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
        .. command.Options.Where(option => option.Name != "--help").SelectMany(option => Tagged((Usage(option), option.Description ?? ""))),
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
