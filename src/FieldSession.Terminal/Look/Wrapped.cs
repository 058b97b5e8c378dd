namespace FieldSession.Terminal.Look;

/// <summary>Text in lines of so many columns, broken between words.</summary>
internal static class Wrapped
{
    /// <summary>The lines; at least one, and a word longer than a line is cut.</summary>
    public static IEnumerable<string> Lines(string text, int columns)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Columns.Of(longer) > columns)
            {
                yield return line;
                longer = word;
            }

            line = Columns.Cut(longer, columns);
        }

        yield return line;
    }
}
