namespace FieldSession.Terminal.Look;

/// <summary>Text in lines of so many columns, broken between words.</summary>
internal static class Wrapped
{
    /// <summary>The lines; at least one. A word longer than a line, such as a hash, is broken.</summary>
    public static IEnumerable<string> Lines(string text, int columns)
    {
        string line = "";
        foreach (string word in text.Split(' ').SelectMany(word => Pieces(word, Math.Max(2, columns))))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Columns.Of(longer) > columns)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static IEnumerable<string> Pieces(string word, int columns)
    {
        while (Columns.Of(word) > columns)
        {
            string piece = Columns.Cut(word, columns)[..^1];
            if (piece.Length == 0)
            {
                break;
            }

            yield return piece;
            word = word[piece.Length..];
        }

        yield return word;
    }
}
