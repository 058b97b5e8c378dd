using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What a line typed on the stop screen means: figures, cause letters and notes are about the marked row.</summary>
internal static class StopLine
{
    /// <summary>The entry line.</summary>
    /// <param name="typed">What was typed; not empty.</param>
    /// <param name="marked">The marked row; null: none.</param>
    public static string Of(string typed, StopRow? marked)
    {
        string line = Typing.LineOf(typed);
        if (marked is null || line.Length == 0)
        {
            return line;
        }

        string[] words = Typed.Words(line);
        bool isFlag = words[0].Length == 1 && SpoiltCauses.FromLetter(words[0][0]) is not null;
        return line[0] switch
        {
            ';' => $"note {marked.Place} {line}",
            _ when isFlag => $"flag {marked.Place} {line}",
            >= '0' and <= '9' when marked.Reading is null => $"fill {marked.Place} {line}",
            >= '0' and <= '9' => $"correct {marked.Place} {line}",
            _ => line,
        };
    }
}
