using System.Collections.Immutable;
using System.Globalization;

namespace FieldSession.Store.MeterLogs;

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
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset at) ? new(at, null, null, false) : NoTime;

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
    private static MeterLogTime WithoutDate(TimeOnly timeOfDay, MeterLogTerms terms) => terms.Start is { } start
        ? new(new(DateOnly.FromDateTime(start.DateTime).ToDateTime(timeOfDay), start.Offset), null, null, false)
        : new(null, MeterLogWords.NoDate, MeterLogWords.SayStart, true);
}
