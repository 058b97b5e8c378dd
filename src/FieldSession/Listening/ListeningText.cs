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
        return words.FirstOrDefault("").ToLowerInvariant() switch
        {
            "mark" => words.Length == 1 ? Parsed.As(new MarkGiven()) : Parsed.No(ListeningWords.MarkIsAlone, "mark"),
            "chain" => Chain(words),
            "ring" => Ring(words),
            _ => null,
        };
    }

    private static Parsed Chain(string[] words) => words is [_, var name, _, ..] && IsName(name)
        ? Parsed.As(new ChainNamed(name, string.Join(' ', words.Skip(2))))
        : Parsed.No(ListeningWords.ChainNeedsNameAndWords, ListeningWords.ChainForm);

    private static Parsed Ring(string[] words) => words is [_, var open, var because, _, ..] && Typed.Is(open, "open") && Typed.Is(because, "because")
        ? Parsed.As(new RingOpened(string.Join(' ', words.Skip(3))))
        : Parsed.No(ListeningWords.RingNeedsReason, ListeningWords.RingForm);

    /// <summary>Whether a word can name a chain.</summary>
    public static bool IsName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length is > 0 and <= LongestName && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
    }
}
