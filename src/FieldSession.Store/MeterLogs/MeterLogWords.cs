using System.Globalization;

namespace FieldSession.Store.MeterLogs;

/// <summary>What is said about logs of meters.</summary>
internal static class MeterLogWords
{
    public const string TooLarge = "the log is larger than 64 MiB";
    public const string SplitIt = "split it by day";
    public const string NoHeader = "no line of it names a time and a level";
    public const string NameColumns = "give --time, --level and, where it has a column of its own, --date with the headers";
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

    public static string GapAt(long line, double seconds) => string.Create(CultureInfo.InvariantCulture, $"a gap of {seconds:0.#} s before line {line}");

    public static string Gaps(int count, string first) => count == 1 ? first : $"{first}, and {count - 1} more";

    public static string NoLevelIn(int count, long line) => count == 1 ? $"no level in line {line}" : $"no level in {count} lines, first in line {line}";

    public static string WordsForLevels(int count, string word, long line) => $"'{word}' instead of a level in line {line}{(count > 1 ? $", and {count - 1} more" : "")}";
}
