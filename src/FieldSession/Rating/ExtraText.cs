using FieldSession.Journal;
using FieldSession.Measures;

namespace FieldSession.Rating;

/// <summary>Reads <c>extra c=74.2 l200=60.1 l250=58 rec=take12</c>; any part can be left away.</summary>
public static class ExtraText
{
    private const string Form = RatingWords.ExtraForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "extra"))
        {
            return null;
        }

        ExtraNoted extra = new(null, null, null, null);
        foreach (string word in words.Skip(1))
        {
            if (Read(extra, word) is not { } read)
            {
                return Parsed.No(RatingWords.IsNoPartOfExtra(word), Form);
            }

            extra = read;
        }

        return words.Length == 1 ? Parsed.No(RatingWords.ExtraReadingSaysNothing, Form) : Parsed.As(extra);
    }

    private static ExtraNoted? Read(ExtraNoted extra, string word)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        string name = equals < 1 ? "" : word[..equals].ToLowerInvariant();
        string value = word[(equals + 1)..];
        if (name == "rec" && value.Length > 0)
        {
            return extra with { Recording = value };
        }

        return Typed.Number(value) is { } level && LevelRange.IsLevel(level)
            ? name switch
            {
                "c" => extra with { CDb = level },
                "l200" => extra with { Band200Db = level },
                "l250" => extra with { Band250Db = level },
                _ => null,
            }
            : null;
    }
}
