using System.Collections.Immutable;
using System.CommandLine;
using System.Reflection;
using System.Text.RegularExpressions;
using FieldSession.Reviewing;

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
        .. Assembly
            .GetExecutingAssembly()
            .GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string?> topic = new("TOPIC")
        {
            Description = "what to read about; without it the topics are listed",
            Arity = ArgumentArity.ZeroOrOne,
            HelpName = "TOPIC",
        };
        topic.AcceptOnlyFromAmong([.. Topics]);
        Command command = new("help", "prints a document of the program: how to type, keys, checks, method") { topic };
        command.SetAction(typed =>
        {
            foreach (
                string line in typed.GetValue(topic) is { } chosen ? DocumentText.Of(TextOf(chosen), ColumnsOfTerminal, Topics) : List()
            )
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
        return
        [
            .. Topics.Select(topic => $"  {Columns.Left(topic, widest)}  {DocumentText.TitleOf(TextOf(topic))}"),
            "",
            CommandWords.HowToReadATopic,
        ];
    }

    private static string TextOf(string topic)
    {
        string name = $"{Folder}{topic}{Ending}";
        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream(name) ?? throw new FileNotFoundException(name, name);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}

/// <summary>
/// A document of the program as lines for a terminal: paragraphs wrapped, marks of Markdown left out, each row of a table as its first cell
/// with the other cells below it, so that it can be read at 80 columns and heard from a screen reader. Pointers to other documents become
/// the command that prints them.
/// </summary>
internal static partial class DocumentText
{
    private const string Fence = "```";
    private const string Indent = "    ";

    /// <summary>The title of a document.</summary>
    public static string TitleOf(string markdown) => markdown.Split('\n')[0].TrimStart('#', ' ').Trim();

    /// <summary>The lines.</summary>
    /// <param name="markdown">The document.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="topics">The documents that the program can print.</param>
    public static IEnumerable<string> Of(string markdown, int columns, IReadOnlyCollection<string> topics)
    {
        string[] lines = WithCommands(markdown, topics).Split('\n');
        for (int at = 0; at < lines.Length; )
        {
            int end = EndOfBlock(lines, at);
            foreach (string line in Block(lines[at..end], columns))
            {
                yield return line;
            }

            at = end;
        }
    }

    private static string WithCommands(string markdown, IReadOnlyCollection<string> topics) =>
        Pointer()
            .Replace(
                markdown,
                pointer => topics.Contains(pointer.Groups[1].Value) ? $"'fieldsession help {pointer.Groups[1].Value}'" : pointer.Value
            );

    private static int EndOfBlock(string[] lines, int at)
    {
        bool isFence = IsFence(lines[at]);
        Func<string, bool> belongs =
            isFence ? line => !IsFence(line)
            : lines[at].StartsWith('|') ? line => line.StartsWith('|')
            : IsAlone(lines[at]) ? _ => false
            : line => !IsAlone(line) && !BeginsItem(line) && !line.StartsWith('|') && !IsFence(line);
        int end = at + 1 + lines.Skip(at + 1).TakeWhile(belongs).Count();
        return Math.Min(lines.Length, isFence ? end + 1 : end);
    }

    private static bool IsFence(string line) => line.StartsWith(Fence, StringComparison.Ordinal);

    private static bool IsAlone(string line) =>
        line.Length == 0 || Heading().IsMatch(line) || line.StartsWith(Indent, StringComparison.Ordinal);

    private static bool BeginsItem(string line) => ItemMark().IsMatch(line);

    private static IEnumerable<string> Block(string[] block, int columns) =>
        block[0] switch
        {
            ['`', '`', '`', ..] => block[1..^1].Select(line => Indent + line),
            ['|', ..] => Table(block, columns),
            { } line when line.StartsWith(Indent, StringComparison.Ordinal) && !BeginsItem(line) => [line],
            { } line when Heading().IsMatch(line) => [Plain(line.TrimStart('#', ' '))],
            _ => Paragraph(block, columns),
        };

    private static IEnumerable<string> Paragraph(string[] block, int columns)
    {
        string mark = ItemMark().Match(block[0]).Value;
        string text = Plain(string.Join(' ', block.Select(line => line.Trim()))[mark.TrimStart().Length..]);
        return Wrapped.Lines(text, columns - mark.Length).Select((line, i) => (i == 0 ? mark : new string(' ', mark.Length)) + line);
    }

    private static IEnumerable<string> Table(string[] block, int columns)
    {
        string[] heads = Cells(block[0]);
        foreach (string[] cells in block.Skip(2).Select(Cells))
        {
            foreach (string line in Wrapped.Lines(cells[0], columns))
            {
                yield return line;
            }

            foreach (
                string cell in cells
                    .Skip(1)
                    .Select((cell, i) => (Head: heads.ElementAtOrDefault(i + 1) ?? "", Cell: cell))
                    .Where(pair => pair.Cell.Length > 0)
                    .SelectMany(pair =>
                        Wrapped.Lines(pair.Head.Length > 0 ? $"{pair.Head}: {pair.Cell}" : pair.Cell, columns - Indent.Length)
                    )
            )
            {
                yield return Indent + cell;
            }
        }
    }

    private static string[] Cells(string row) =>
        [.. CellBorder().Split(row.Trim().Trim('|')).Select(cell => Plain(cell.Trim()).Replace("\\|", "|", StringComparison.Ordinal))];

    private static string Plain(string text) =>
        Link()
            .Replace(text, link => link.Groups[1].Value)
            .Replace("**", "", StringComparison.Ordinal)
            .Replace("`", "", StringComparison.Ordinal);

    [GeneratedRegex(@"docs/([a-z-]+)\.md")]
    private static partial Regex Pointer();

    [GeneratedRegex("^#{1,6} ")]
    private static partial Regex Heading();

    [GeneratedRegex(@"^ *(?:[-*]|\d+\.) +")]
    private static partial Regex ItemMark();

    [GeneratedRegex(@"(?<!\\)\|")]
    private static partial Regex CellBorder();

    [GeneratedRegex(@"!?\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();
}
