using System.Collections.Immutable;
using System.CommandLine;
using System.Reflection;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'help': prints the documents that a crew needs, which an installed program carries with it.</summary>
internal static class HelpCommand
{
    private const string Folder = "docs/";
    private const string Ending = ".md";
    private const int ColumnsOfTerminal = 80;

    /// <summary>The topics, in the order of the alphabet.</summary>
    public static ImmutableArray<string> Topics { get; } =
    [
        .. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string?> topic = new("TOPIC") { Description = "what to read about; without it the topics are listed", Arity = ArgumentArity.ZeroOrOne };
        topic.AcceptOnlyFromAmong([.. Topics]);
        Command command = new("help", "prints a document of the program: how to type, keys, checks, method") { topic };
        command.SetAction(typed =>
        {
            foreach (string line in typed.GetValue(topic) is { } chosen ? DocumentText.Of(TextOf(chosen), ColumnsOfTerminal, Topics) : List())
            {
                outside.Output.WriteLine(line);
            }

            return ExitCode.Done;
        });
        return command;
    }

    private static IEnumerable<string> List()
    {
        int widest = Topics.Max(topic => topic.Length);
        return [.. Topics.Select(topic => $"  {Columns.Left(topic, widest)}  {DocumentText.TitleOf(TextOf(topic))}"), "", CommandWords.HowToReadATopic];
    }

    private static string TextOf(string topic)
    {
        string name = $"{Folder}{topic}{Ending}";
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name) ?? throw new FileNotFoundException(name, name);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
