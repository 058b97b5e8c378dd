using System.Globalization;

namespace FieldSession.Reporting;

/// <summary>Times of day at the place of the day.</summary>
public static class Local
{
    private const int MinutesAnHour = 60;

    /// <summary>"+02:00".</summary>
    public static string Offset(int minutes)
    {
        int size = Math.Abs(minutes);
        return string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? '-' : '+')}{size / MinutesAnHour:00}:{size % MinutesAnHour:00}");
    }

    /// <summary>The local time of day, "14:05".</summary>
    /// <param name="at">The moment.</param>
    /// <param name="offsetMinutes">What the clocks there are ahead of UTC.</param>
    public static string TimeOfDay(DateTimeOffset at, int offsetMinutes) =>
        at.ToOffset(TimeSpan.FromMinutes(offsetMinutes)).ToString("HH:mm", CultureInfo.InvariantCulture);
}
