using System.Text;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>The table of words in words: as a part of the help, as docs/words.md.</summary>
internal static class WordsPage
{
    private const string Indent = "     ";

    /// <summary>The words that are of use now: an example of each, and what it does.</summary>
    public static IEnumerable<PageRow> Help(Study study, int columns)
    {
        yield return PageRow.Blank;
        yield return PageRow.Of($" {KeysWords.WordsNow(study)}", Ink.Strong);
        foreach (Verb verb in VerbTable.UsableIn(study))
        {
            yield return PageRow.Of($" {verb.Example}", Ink.Strong);
            foreach (string line in Wrapped.Lines(verb.Does, columns - Indent.Length - 1))
            {
                yield return PageRow.Of(Indent).And(line);
            }
        }
    }

    /// <summary>docs/words.md.</summary>
    public static string Document()
    {
        StringBuilder text = new(KeysWords.WordsPageBegins);
        foreach ((VerbTimes time, string title) in KeysWords.TimesOfWords)
        {
            text.Append(KeysWords.WordsTableHead(title));
            foreach (Verb verb in VerbTable.All.Where(verb => verb.Times.HasFlag(time)))
            {
                text.Append($"| `{verb.Word}` | `{verb.Example}` | {verb.Does} |\n");
            }
        }

        return text.ToString();
    }
}
