using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>A fenced block of a page.</summary>
/// <param name="Word">What is behind its opening fence: sh, keys, screen, text.</param>
/// <param name="Lines">What is in it.</param>
/// <param name="Place">Index in the page of the line behind its opening fence.</param>
internal sealed record Fence(string Word, ImmutableArray<string> Lines, int Place);

/// <summary>A page of Markdown with its fenced blocks.</summary>
internal sealed partial class Page(string file)
{
    private const string Mark = "```";
    private readonly ImmutableArray<string> _lines = [.. File.ReadAllLines(Path.Combine(Repository.Root, file))];

    /// <summary>Its fenced blocks, in order.</summary>
    public IEnumerable<Fence> Fences
    {
        get
        {
            for (int i = 0; i < _lines.Length; i++)
            {
                if (_lines[i].StartsWith(Mark, StringComparison.Ordinal))
                {
                    ImmutableArray<string> inside = [.. _lines.Skip(i + 1).TakeWhile(line => line != Mark)];
                    yield return new Fence(_lines[i][Mark.Length..].Trim(), inside, i + 1);
                    i += inside.Length + 1;
                }
            }
        }
    }

    /// <summary>Where it calls the program: indented lines, blocks for the shell, and words in backticks.</summary>
    public IEnumerable<string> Calls =>
        [
            .. _lines.Where(line => line.StartsWith("    fieldsession ", StringComparison.Ordinal)).Select(line => line.Trim()),
            .. Fences.Where(fence => fence.Word == "sh").SelectMany(fence => fence.Lines),
            .. _lines.SelectMany(line => InlineCall().Matches(line)).Select(match => match.Groups[1].Value),
        ];

    /// <summary>The page with other words in some of its blocks, by their places.</summary>
    public string With(IReadOnlyDictionary<int, string> told)
    {
        List<string> page = [];
        int at = 0;
        foreach (Fence fence in Fences.Where(fence => told.ContainsKey(fence.Place)))
        {
            page.AddRange(_lines[at..fence.Place]);
            page.Add(told[fence.Place]);
            at = fence.Place + fence.Lines.Length;
        }

        page.AddRange(_lines[at..]);
        return string.Join('\n', page) + "\n";
    }

    [GeneratedRegex("`(fieldsession [^`]+)`")]
    private static partial Regex InlineCall();
}
