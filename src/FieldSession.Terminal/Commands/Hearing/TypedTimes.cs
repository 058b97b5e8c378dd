using System.Globalization;

namespace FieldSession.Terminal.Commands;

/// <summary>Reads zones and times that are typed behind options.</summary>
internal static class TypedTimes
{
    private const double WidestZoneHours = 14;

    /// <summary>A distance from UTC, such as +01:00; null: not given, or wrong.</summary>
    public static TimeSpan? Zone(string? text, List<string> objections)
    {
        if (text is null or "Z" or "z")
        {
            return text is null ? null : TimeSpan.Zero;
        }

        bool isRead = TimeSpan.TryParseExact(text.TrimStart('+', '-'), ["hh\\:mm", "hh"], CultureInfo.InvariantCulture, out TimeSpan zone);
        if (!isRead || zone.TotalHours > WidestZoneHours || text[0] is not ('+' or '-'))
        {
            objections.Add(ListenWords.ZoneIs(text));
            return null;
        }

        return text[0] == '-' ? -zone : zone;
    }

    /// <summary>A date with a time on the laptop's clock; null: not given, or wrong.</summary>
    public static DateTimeOffset? Local(string option, string? text, TimeZoneInfo zone, List<string> objections)
    {
        if (text is null)
        {
            return null;
        }

        if (
            DateTime.TryParseExact(text, ListenWords.TimeForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local)
            && !zone.IsInvalidTime(local)
        )
        {
            return new DateTimeOffset(local, zone.GetUtcOffset(local));
        }

        objections.Add(ListenWords.TimeIs(option, text));
        return null;
    }
}
