using System.Globalization;
using FieldSession.Journal;
using FieldSession.Store.Exports;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>
/// How a user is used to reading numbers and the time of day. The screens follow it; what commands print and what is in files keeps
/// the point and the 24-hour clock, so that every program reads it alike. Kilometres or miles are the plan's, for the whole crew.
/// </summary>
/// <param name="HasDecimalComma">71,4 and not 71.4.</param>
/// <param name="HasTwelveHourClock">2:05 PM and not 14:05.</param>
/// <param name="HasPlainLetters">No block letters: what is written large is one row of text, for a screen reader.</param>
internal sealed record Habits(bool HasDecimalComma = false, bool HasTwelveHourClock = false, bool HasPlainLetters = false)
{
    /// <summary>The habits that a user's lines tell.</summary>
    /// <param name="lines">The lines; empty ones and those that begin with # are passed over.</param>
    /// <returns>The habits, or what is wrong, beginning with the line's number.</returns>
    public static (Habits Habits, string? Refusal) Of(IReadOnlyList<string> lines)
    {
        Habits habits = new();
        for (int i = 0; i < lines.Count; i++)
        {
            if (EntryText.IsPassedOver(lines[i]))
            {
                continue;
            }

            if (habits.With(string.Join(' ', Typed.Words(lines[i].Replace("=", " = ", StringComparison.Ordinal)))) is not { } told)
            {
                return (new Habits(), ShellWords.NoHabit(i + 1, lines[i].Trim()));
            }

            habits = told;
        }

        return (habits, null);
    }

    /// <summary>How what is written large is written.</summary>
    public LetterForm Letters => HasPlainLetters ? LetterForm.Plain : LetterForm.Block;

    /// <summary>Does something with numbers and times written in these habits.</summary>
    public T Follow<T>(Func<T> act) => NumberForm.Of(Culture(), act);

    private Habits? With(string line) =>
        line.ToLowerInvariant() switch
        {
            "decimal = comma" => this with { HasDecimalComma = true },
            "decimal = point" => this with { HasDecimalComma = false },
            "clock = 12" => this with { HasTwelveHourClock = true },
            "clock = 24" => this with { HasTwelveHourClock = false },
            "letters = plain" => this with { HasPlainLetters = true },
            "letters = block" => this with { HasPlainLetters = false },
            _ => null,
        };

    private CultureInfo Culture()
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = HasDecimalComma ? "," : ".";
        culture.NumberFormat.NumberGroupSeparator = HasDecimalComma ? "." : ",";
        culture.NumberFormat.PercentDecimalSeparator = culture.NumberFormat.NumberDecimalSeparator;
        culture.DateTimeFormat.ShortTimePattern = HasTwelveHourClock ? "h:mm tt" : "HH:mm";
        return culture;
    }
}
