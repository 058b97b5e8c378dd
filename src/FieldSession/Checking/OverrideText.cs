using FieldSession.Journal;

namespace FieldSession.Checking;

/// <summary>Reads <c>override CHECK words</c>.</summary>
public static class OverrideText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "override"))
        {
            return null;
        }

        if (words.Length < 3)
        {
            return Parsed.No(CheckingWords.OverrideNamesCheckAndReason, CheckingWords.OverrideForm);
        }

        return Parsed.As(new CheckOverridden(words[1].ToLowerInvariant(), string.Join(' ', words.Skip(2))));
    }
}
