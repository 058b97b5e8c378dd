using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Reads <c>run 417</c>, <c>run 417 driver=Ro</c> and <c>end</c>.</summary>
public static class RunText
{
    private const string Driver = "driver=";
    private const string Form = "type 'run 417' or 'run 417 driver=Ro'";

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 1 && Typed.Is(words[0], "end"))
        {
            return Parsed.As(new RunEnded());
        }

        return words.Length > 0 && Typed.Is(words[0], "run") ? Start(words) : null;
    }

    private static Parsed Start(string[] words)
    {
        if (words.Length is < 2 or > 3 || SpecCode.Parse(words[1]) is not { } code)
        {
            return Parsed.No("a run is started on a three-digit code", Form);
        }

        if (words.Length == 2)
        {
            return Parsed.As(new RunStarted(code, null));
        }

        return words[2].StartsWith(Driver, StringComparison.OrdinalIgnoreCase) && words[2].Length > Driver.Length
            ? Parsed.As(new RunStarted(code, words[2][Driver.Length..]))
            : Parsed.No($"'{words[2]}' does not say who drives", Form);
    }
}
