using FieldSession.Journal;

namespace FieldSession.Listening;

/// <summary>Reads <c>mark</c>, <c>chain recorder at=headrest gain=3</c> and <c>ring open because WHY</c>.</summary>
public static class ListeningText
{
    /// <summary>Longest name of a chain.</summary>
    public const int LongestName = 40;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        return words switch
        {
            [var first] when Typed.Is(first, "mark") => Parsed.As(new MarkGiven()),
            [var first, ..] when Typed.Is(first, "mark") => Parsed.No(ListeningWords.MarkStandsAlone, "mark"),
            [var first, var name, _, ..] when Typed.Is(first, "chain") && IsName(name) => Parsed.As(new ChainNamed(name, string.Join(' ', words.Skip(2)))),
            [var first, ..] when Typed.Is(first, "chain") => Parsed.No(ListeningWords.ChainNeedsNameAndWords, ListeningWords.ChainForm),
            [var first, var open, var because, _, ..] when Typed.Is(first, "ring") && Typed.Is(open, "open") && Typed.Is(because, "because") =>
                Parsed.As(new RingOpened(string.Join(' ', words.Skip(3)))),
            [var first, ..] when Typed.Is(first, "ring") => Parsed.No(ListeningWords.RingNeedsReason, ListeningWords.RingForm),
            _ => null,
        };
    }

    /// <summary>Whether a word can name a chain.</summary>
    public static bool IsName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length is > 0 and <= LongestName && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
    }
}
