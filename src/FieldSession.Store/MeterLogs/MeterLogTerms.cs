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
    DateTimeOffset? Start = null);
