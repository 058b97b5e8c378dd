using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>
/// Reads a cause letter alone (<c>t</c>, <c>w</c>, <c>s</c>, <c>r</c>, <c>n</c>, <c>e</c>), which flags the last reading and
/// given again takes the flag back, and <c>flag 2.5 t words</c>, which flags the reading of run 2 on segment 5.
/// </summary>
public static class FlagText
{
    private const string Form = FlaggingWords.FlagForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0)
        {
            return null;
        }

        if (words[0].Length == 1 && SpoiltCauses.FromLetter(words[0][0]) is { } cause)
        {
            return study.LastRun?.LastReading is { } last
                ? Toggle(last, cause, words.Skip(1))
                : Parsed.No(FlaggingWords.ThereIsNoReadingToFlag, FlaggingWords.ReadingBeforeLetter);
        }

        return Typed.Is(words[0], "flag") ? Chosen(study, words) : null;
    }

    private static Parsed Chosen(Study study, string[] words)
    {
        if (words.Length < 3 || ReadingPlace.Parse(words[1]) is not { } place || words[2].Length != 1 || SpoiltCauses.FromLetter(words[2][0]) is not { } cause)
        {
            return Parsed.No(FlaggingWords.FlagNamesReadingAndCause, Form);
        }

        return place.In(study) is { } reading
            ? Toggle(reading, cause, words.Skip(3))
            : Parsed.No(FlaggingWords.ThereIsNoReading(words[1]), Form);
    }

    private static Parsed Toggle(Reading reading, SpoiltCause cause, IEnumerable<string> words)
    {
        string said = string.Join(' ', words);
        bool sameAgain = reading.Spoilt is { } spoilt && spoilt.Cause == cause && said.Length == 0;
        return Parsed.As(sameAgain
            ? new FlagTakenBack(reading.Mark.Number, reading.Mark.Strand)
            : new ReadingSpoilt(reading.Mark.Number, cause, said.Length == 0 ? null : said, reading.Mark.Strand));
    }
}
