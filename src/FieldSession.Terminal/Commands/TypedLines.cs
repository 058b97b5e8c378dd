using System.Text;
using FieldSession.Journal;

namespace FieldSession.Terminal.Commands;

/// <summary>Lines from a stream that may be anything, also one without an end of line: of a line that is too long, no more is kept than shows it.</summary>
internal static class TypedLines
{
    /// <summary>The next line, without its end; null: there is none. One longer than <see cref="Typed.LongestLine"/> is cut just beyond.</summary>
    public static string? Next(TextReader input)
    {
        StringBuilder line = new();
        int read = input.Read();
        bool isThere = read >= 0;
        for (; read >= 0 && read != '\n'; read = input.Read())
        {
            if (line.Length <= Typed.LongestLine)
            {
                line.Append((char)read);
            }
        }

        return isThere ? WithoutReturn(line).ToString() : null;
    }

    private static StringBuilder WithoutReturn(StringBuilder line) => line.Length > 0 && line[^1] == '\r' ? line.Remove(line.Length - 1, 1) : line;
}
