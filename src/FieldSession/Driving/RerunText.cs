using FieldSession.Journal;

namespace FieldSession.Driving;

/// <summary>Reads <c>rerun bracket 2 WHY</c>.</summary>
public static class RerunText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "rerun"))
        {
            return null;
        }

        bool isGood = words.Length >= 4 && Typed.Is(words[1], "bracket");
        return isGood && Typed.Count(words[2]) is { } bracket
            ? Parsed.As(new BracketRerun(bracket, string.Join(' ', words.Skip(3))))
            : Parsed.No(DrivingWords.OnlyWholeBracketIsRerun, DrivingWords.RerunForm);
    }
}
