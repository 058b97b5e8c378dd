using System.Globalization;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// Reads what the meter showed: <c>5860</c>, <c>58-60</c>, <c>58 60</c>, <c>58.4-60.1</c>, <c>58,4-60,1</c>,
/// <c>584601</c>, or one value <c>71.4</c>, <c>714</c>, <c>71</c>; then, where it is spoilt, a cause letter and words.
/// Two digits are one value, three NN.N, four NN-NN, six NN.N-NN.N; a range typed high first is swapped.
/// </summary>
public static class ReadingText
{
    private const string Form = DrivingWords.ReadingForm;
    private const int FiguresOfWholeDb = 2;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string line = text.Trim();
        if (line.Length == 0 || !char.IsAsciiDigit(line[0]))
        {
            return null;
        }

        int end = EndOfNumbers(line);
        string rest = line[end..].Trim();
        SpoiltCause? cause = CauseIn(rest);
        if (rest.Length > 0 && cause is null)
        {
            return No(DrivingWords.IsNoCauseOfSpoiling(rest), DrivingWords.CauseCure);
        }

        string? words = rest.Length > 1 ? rest[1..].Trim() : null;
        string numbers = line[..end].Trim();
        return Levels(numbers) is { } ends
            ? Parsed.As(
                new ReadingTaken(LevelRange.FromDb(ends.First, ends.Second), ends.First > ends.Second, cause, words)
                {
                    TwoFigures = numbers.Length == FiguresOfWholeDb ? true : null,
                }
            )
            : No(DrivingWords.IsNoReading(numbers), DrivingWords.ReadingCure);
    }

    private static Parsed No(string why, string cure) => new(null, new Objection(why, Form) { Cure = cure });

    private static SpoiltCause? CauseIn(string rest) =>
        rest.Length == 1 || (rest.Length > 1 && rest[1] == ' ') ? SpoiltCauses.FromLetter(rest[0]) : null;

    private static int EndOfNumbers(string line)
    {
        int end = 0;
        while (end < line.Length && (char.IsAsciiDigit(line[end]) || line[end] is '.' or ',' or '-' or '\u2013' or ' '))
        {
            end++;
        }

        return end;
    }

    private static (double First, double Second)? Levels(string numbers)
    {
        string[] parts = numbers.Split(['-', '\u2013', ' '], StringSplitOptions.RemoveEmptyEntries);
        int dashes = numbers.Count(c => c is '-' or '\u2013');
        return (parts.Length, dashes) switch
        {
            (1, 0) => OnePart(parts[0]),
            (2, <= 1) when OneLevel(parts[0]) is { } first && OneLevel(parts[1]) is { } second => (first, second),
            _ => null,
        };
    }

    private static (double First, double Second)? OnePart(string part) =>
        part.Length switch
        {
            4 when part.All(char.IsAsciiDigit) => (Tenths(part[..2]) * 10, Tenths(part[2..]) * 10),
            6 when part.All(char.IsAsciiDigit) => (Tenths(part[..3]), Tenths(part[3..])),
            _ => OneLevel(part) is { } level ? (level, level) : null,
        };

    // A level is NN, NNN (read NN.N), or has one point or comma with one figure behind it.
    private static double? OneLevel(string part)
    {
        int mark = part.IndexOfAny(['.', ',']);
        if (mark < 0)
        {
            return part.Length switch
            {
                2 => Tenths(part) * 10,
                3 => Tenths(part),
                _ => null,
            };
        }

        bool wellFormed = mark is 2 or 3 && part.Length == mark + 2 && part.Count(char.IsAsciiDigit) == part.Length - 1;
        return wellFormed && Typed.Number(part) is { } level && LevelRange.IsLevel(level) ? level : null;
    }

    private static double Tenths(string digits) => int.Parse(digits, CultureInfo.InvariantCulture) / 10.0;
}
