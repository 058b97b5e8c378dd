using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What a line typed on the stop screen means: figures and cause letters are about the marked passage.</summary>
internal static class StopLine
{
    /// <summary>The entry line.</summary>
    /// <param name="typed">What was typed; not empty.</param>
    /// <param name="run">Number of the run that is read back.</param>
    /// <param name="segment">Segment of the marked passage.</param>
    public static string Of(string typed, int run, int segment)
    {
        string line = Typing.LineOf(typed);
        string[] words = Typed.Words(line);
        bool isFlag = words.Length > 0 && words[0].Length == 1 && SpoiltCauses.FromLetter(words[0][0]) is not null;
        if (isFlag)
        {
            return $"flag {run}.{segment} {line}";
        }

        return line.Length > 0 && char.IsAsciiDigit(line[0]) ? $"correct {run}.{segment} {line}" : line;
    }
}
