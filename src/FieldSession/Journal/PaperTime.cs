using System.Globalization;
using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>
/// The time that is typed before a line that was logged on paper: <c>at=10:42</c> or <c>at=2026-11-26T10:42</c>, then the word
/// <c>spot</c> where the paper says that the flag was given on the spot.
/// </summary>
/// <param name="Day">The day; null: the last one on which this time of day is past.</param>
/// <param name="Time">The time of day by the crew's clock.</param>
/// <param name="OnSpot">Whether the paper says that the flag was given on the spot.</param>
public sealed record PaperTime(DateOnly? Day, TimeOnly Time, bool OnSpot)
{
    private const string Begin = "at=";
    private const string Spot = "spot";

    /// <summary>Whether a line begins with a time.</summary>
    public static bool Begins(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.StartsWith(Begin, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The time before a line, and the line behind it; null: the time is none, or nothing follows it.</summary>
    public static (PaperTime When, string Line)? Parse(string text)
    {
        string[] words = Typed.Words(text);
        bool onSpot = words.Length > 2 && Typed.Is(words[1], Spot);
        string line = string.Join(' ', words.Skip(onSpot ? 2 : 1));
        return words.Length > 1 && TimeIn(words[0][Begin.Length..]) is { } time ? (new PaperTime(time.Day, time.Time, onSpot), line) : null;
    }

    /// <summary>The moment that is meant.</summary>
    /// <param name="now">Now.</param>
    /// <param name="zone">The time zone that the crew's clocks show.</param>
    public DateTimeOffset Moment(DateTimeOffset now, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        DateOnly today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, zone).DateTime);
        DateTimeOffset moment = In(zone, Day ?? today);
        return Day is null && moment > now ? In(zone, today.AddDays(-1)) : moment;
    }

    private DateTimeOffset In(TimeZoneInfo zone, DateOnly day)
    {
        DateTime local = day.ToDateTime(Time);
        return new DateTimeOffset(local, zone.GetUtcOffset(local));
    }

    private static (DateOnly? Day, TimeOnly Time)? TimeIn(string text)
    {
        string[] parts = text.Split('T', 't');
        string[] times = ["H:mm", "H:mm:ss"];
        if (
            !TimeOnly.TryParseExact(parts[^1], times, CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time)
            || parts.Length > 2
        )
        {
            return null;
        }

        return parts.Length == 1 ? (null, time)
            : DateOnly.TryParseExact(parts[0], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
                ? (day, time)
            : null;
    }
}

/// <summary>What a typed line came to: a fact to be written, or an objection that says what to type instead.</summary>
/// <param name="Entry">The fact; null where there is an objection.</param>
/// <param name="Objection">The objection; null where there is a fact.</param>
public sealed record Parsed(Entry? Entry, Objection? Objection)
{
    /// <summary>The time that was typed before the line, where it was logged on paper; null: it happens now.</summary>
    public PaperTime? Paper { get; init; }

    /// <summary>A line that is a fact.</summary>
    public static Parsed As(Entry entry) => new(entry, null);

    /// <summary>A line that can't be taken.</summary>
    /// <param name="why">What is wrong with it.</param>
    /// <param name="instead">What to type instead.</param>
    public static Parsed No(string why, string instead) => new(null, new Objection(why, instead));
}

/// <summary>How typed words and numbers are read: letter case does not count, numbers have a point or a comma.</summary>
public static class Typed
{
    /// <summary>The longest line that is taken, in characters.</summary>
    public const int LongestLine = 4000;

    /// <summary>The words of a line.</summary>
    public static string[] Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <summary>How many of the first words are one of these names, the longest that fits; 1 where none does.</summary>
    public static int WordsOfName(IReadOnlyList<string> words, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(words);
        return names
            .Select(Words)
            .Where(name => name.Length <= words.Count && name.Zip(words).All(pair => Is(pair.First, pair.Second)))
            .Select(name => name.Length)
            .DefaultIfEmpty(1)
            .Max();
    }

    /// <summary>The words, those of a person behind <c>driver=</c> and of a car behind <c>car=</c> put together.</summary>
    public static string[] NamesJoined(string[] words, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] crew = [.. study.Plan?.Crew.Select(member => member.Name) ?? []];
        return Joined(Joined(words, "driver=", crew), "car=", [.. study.Plan?.Cars ?? []]);
    }

    /// <summary>Whether a typed word is a word of the grammar.</summary>
    public static bool Is(string typed, string word) => string.Equals(typed, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>A number with point or comma, sign allowed; null where the text is none, or not finite.</summary>
    public static double? Number(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return
            double.TryParse(
                text.Replace(',', '.'),
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out double number
            ) && double.IsFinite(number)
            ? number
            : null;
    }

    /// <summary>A whole number from 1; null where the text is none.</summary>
    public static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count > 0 ? count : null;

    private static string[] Joined(string[] words, string part, string[] names)
    {
        List<string> joined = [];
        for (int taken, at = 0; at < words.Length; at += taken)
        {
            taken = words[at].StartsWith(part, StringComparison.OrdinalIgnoreCase)
                ? WordsOfName([words[at][part.Length..], .. words[(at + 1)..]], names)
                : 1;
            joined.Add(string.Join(' ', words[at..(at + taken)]));
        }

        return [.. joined];
    }
}
