using System.Collections.Immutable;
using System.Globalization;

namespace FieldSession.Store.MeterLogs;

/// <summary>What somebody says about a log beside the file itself; null: the file has to say it.</summary>
/// <param name="TimeColumn">Header of the column with the time, or with time and date.</param>
/// <param name="DateColumn">Header of the column with the date.</param>
/// <param name="LevelColumn">Header of the column with the level.</param>
/// <param name="DayFirst">Whether dates with slashes begin with the day; false: with the month.</param>
/// <param name="Zone">The zone of times that name none, as its distance from UTC.</param>
/// <param name="Start">When the log began, where it counts from its start or names no date.</param>
public sealed record MeterLogTerms(
    string? TimeColumn = null,
    string? DateColumn = null,
    string? LevelColumn = null,
    bool? DayFirst = null,
    TimeSpan? Zone = null,
    DateTimeOffset? Start = null
);

/// <summary>One time of a log, or what is missing to know it.</summary>
/// <param name="At">The time; null: not known.</param>
/// <param name="What">What is wrong; null: nothing.</param>
/// <param name="Remedy">What to do about it; null: nothing.</param>
/// <param name="IsOfAllLines">Whether the same is missing in every line, so that it is said once.</param>
internal readonly record struct MeterLogTime(DateTimeOffset? At, string? What, string? Remedy, bool IsOfAllLines)
{
    private static readonly ImmutableArray<string> TimesOfDay = ["H:m:s", "H:m:s.FFFFFFF", "h:m:s tt", "h:m:s.FFFFFFF tt"];
    private static readonly ImmutableArray<string> Dates = ["yyyy-M-d", "yyyy/M/d", "yyyy.M.d", "d.M.yyyy", "yyyyMMdd"];

    /// <summary>Reads a time, with or without date and zone.</summary>
    /// <param name="text">The time as it is there.</param>
    /// <param name="dayFirst">Whether dates with slashes begin with the day; null: not known.</param>
    /// <param name="terms">What somebody says about the log.</param>
    public static MeterLogTime Of(string text, bool? dayFirst, MeterLogTerms terms)
    {
        bool isIso = text.Length > 10 && text[10] == 'T';
        return isIso && text.AsSpan(11).ContainsAny(['Z', '+', '-'])
            ? WithZone(text)
            : Parted((isIso ? $"{text[..10]} {text[11..]}" : text).Split(' ', StringSplitOptions.RemoveEmptyEntries), dayFirst, terms);
    }

    private static MeterLogTime WithZone(string text) =>
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset at)
            ? new(at, null, null, false)
            : NoTime;

    private static MeterLogTime Parted(string[] parts, bool? dayFirst, MeterLogTerms terms)
    {
        bool hasDate = parts.Length > 1 && !parts[0].Contains(':', StringComparison.Ordinal);
        string time = string.Join(' ', hasDate ? parts[1..] : parts).Replace(',', '.');
        if (!TimeOnly.TryParseExact(time, [.. TimesOfDay], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly timeOfDay))
        {
            return NoTime;
        }

        return hasDate ? WithDate(parts[0], timeOfDay, dayFirst, terms) : WithoutDate(timeOfDay, terms);
    }

    private static MeterLogTime NoTime => new(null, MeterLogWords.NoTime, MeterLogWords.TimeForm, false);

    private static MeterLogTime WithDate(string text, TimeOnly timeOfDay, bool? dayFirst, MeterLogTerms terms)
    {
        bool isPlain = DateOnly.TryParseExact(text, [.. Dates], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date);
        if (!isPlain && dayFirst is null && text.Split('/').Length == 3)
        {
            return new(null, MeterLogWords.WhichDates, MeterLogWords.SayDates, true);
        }

        string slashed = dayFirst == true ? "d/M/yyyy" : "M/d/yyyy";
        if (!isPlain && !DateOnly.TryParseExact(text, slashed, CultureInfo.InvariantCulture, DateTimeStyles.None, out date))
        {
            return NoTime;
        }

        return terms.Zone is { } zone
            ? new(new(date.ToDateTime(timeOfDay), zone), null, null, false)
            : new(null, MeterLogWords.NoZone, MeterLogWords.SayZone, true);
    }

    // a log that goes over midnight is refused as one that goes back
    private static MeterLogTime WithoutDate(TimeOnly timeOfDay, MeterLogTerms terms) =>
        terms.Start is { } start
            ? new(new(DateOnly.FromDateTime(start.DateTime).ToDateTime(timeOfDay), start.Offset), null, null, false)
            : new(null, MeterLogWords.NoDate, MeterLogWords.SayStart, true);
}

/// <summary>What is said about logs of meters.</summary>
internal static class MeterLogWords
{
    public const string TooLarge = "the log is larger than 64 MiB";
    public const string SplitIt = "split it by day";
    public const string NoHeader = "no line of it names a time and a level";
    public const string NameColumns = "give the headers: --time, --level, and --date where it has its own column";
    public const string NoSuchColumn = "there is no such column";
    public const string OneOfHeaders = "write a header as the file does";
    public const string TwoFit = "two columns may hold it";
    public const string ChooseTime = "choose with --time";
    public const string ChooseDate = "choose with --date";
    public const string ChooseLevel = "choose with --level";
    public const string NoTime = "no time";
    public const string TimeForm = "a time is 10:15:20, a date 2026-02-03, 3.2.2026 or 2/3/2026, an elapsed time seconds";
    public const string WhichDates = "day or month may come first in its dates";
    public const string SayDates = "give --dates dmy or --dates mdy";
    public const string NoZone = "its times name no zone";
    public const string SayZone = "give --zone, such as --zone +01:00";
    public const string NoDate = "its times name no date";
    public const string SayStart = "give --start with date and time of the first line";
    public const string GoesBack = "the time goes back";
    public const string CutApart = "cut the file there, or check the meter's clock";
    public const string NoLevels = "its column has no level";
    public const string NotALevel = "not a level that a road makes";
    public const string LevelForm = "levels are between 0 and 160 dB; choose the column with --level";
    public const string TwoLines = "fewer than two lines with a time";

    public static string GapAt(long line, double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"a gap of {seconds:0.#} s before line {line}");

    public static string Gaps(int count, string first) => count == 1 ? first : $"{first}, and {count - 1} more";

    public static string NoLevelIn(int count, long line) =>
        count == 1 ? $"no level in line {line}" : $"no level in {count} lines, first in line {line}";

    public static string WordsForLevels(int count, string word, long line) =>
        $"'{word}' instead of a level in line {line}{(count > 1 ? $", and {count - 1} more" : "")}";
}
