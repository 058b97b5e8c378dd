using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace FieldSession.Terminal.Look;

/// <summary>Text in terminal columns: a wide character takes two, a combining one none, so lengths in characters do not align.</summary>
internal static class Columns
{
    private const char CutMark = '\u2026';

    /// <summary>How many columns a text takes.</summary>
    public static int Of(string text) => Clusters(text).Sum(cluster => Math.Max(0, cluster.GetColumns()));

    /// <summary>The text, cut with an ellipsis where it takes more columns than there are.</summary>
    public static string Cut(string text, int columns)
    {
        if (columns <= 0)
        {
            return "";
        }

        if (Of(text) <= columns)
        {
            return text;
        }

        StringBuilder kept = new();
        int used = 1;
        foreach (string cluster in Clusters(text))
        {
            used += Math.Max(0, cluster.GetColumns());
            if (used > columns)
            {
                break;
            }

            kept.Append(cluster);
        }

        return kept.Append(CutMark).ToString();
    }

    /// <summary>The text at the left of exactly so many columns.</summary>
    public static string Left(string text, int columns)
    {
        string cut = Cut(text, columns);
        return cut + new string(' ', Math.Max(0, columns - Of(cut)));
    }

    /// <summary>The text at the right of exactly so many columns.</summary>
    public static string Right(string text, int columns)
    {
        string cut = Cut(text, columns);
        return new string(' ', Math.Max(0, columns - Of(cut))) + cut;
    }

    private static IEnumerable<string> Clusters(string text)
    {
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            yield return elements.GetTextElement();
        }
    }
}
