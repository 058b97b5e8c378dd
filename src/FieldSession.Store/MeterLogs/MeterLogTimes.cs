using System.Globalization;
using FieldSession.Store.Readings;

namespace FieldSession.Store.MeterLogs;

/// <summary>The times of a log's lines: with zone, in a zone that was told, or in seconds from its start.</summary>
internal static class MeterLogTimes
{
    /// <summary>Seconds of every row on the log's own clock, and the time of the first; null: the problems say what is missing.</summary>
    /// <param name="text">The log.</param>
    /// <param name="columns">Its columns.</param>
    /// <param name="terms">What somebody says about it.</param>
    /// <param name="problems">Where problems go.</param>
    public static (double[] Seconds, DateTimeOffset? Begun)? Of(
        MeterLogText text,
        MeterLogColumns columns,
        MeterLogTerms terms,
        FileProblems problems
    )
    {
        string[] times = [.. text.Rows.Select(row => WithDate(row.Fields, columns))];
        (double[] Seconds, DateTimeOffset? Begun)? found = columns.IsElapsed
            ? Elapsed(text, times, terms, problems)
            : Clock(text, times, terms, problems);
        if (found is { } known)
        {
            int back = Enumerable
                .Range(1, Math.Max(0, known.Seconds.Length - 1))
                .FirstOrDefault(i => known.Seconds[i] < known.Seconds[i - 1]);
            if (back > 0)
            {
                problems.Add(text.Rows[back].Line, text.Header[columns.Time], times[back], MeterLogWords.GoesBack, MeterLogWords.CutApart);
            }
        }

        return problems.Any ? null : found;
    }

    private static string WithDate(IReadOnlyList<string> fields, MeterLogColumns columns)
    {
        string time = columns.Time < fields.Count ? fields[columns.Time] : "";
        return columns.Date is { } date && date < fields.Count ? $"{fields[date]} {time}" : time;
    }

    private static (double[] Seconds, DateTimeOffset? Begun)? Elapsed(
        MeterLogText text,
        string[] times,
        MeterLogTerms terms,
        FileProblems problems
    )
    {
        double?[] seconds = [.. times.Select(time => ElapsedS(time, text.Delimiter))];
        for (int i = 0; i < seconds.Length; i++)
        {
            if (seconds[i] is null)
            {
                problems.Add(text.Rows[i].Line, null, times[i], MeterLogWords.NoTime, MeterLogWords.TimeForm);
            }
        }

        double first = seconds.FirstOrDefault() ?? 0;
        return problems.Any ? null : ([.. seconds.Select(second => second!.Value - first)], terms.Start);
    }

    private static double? ElapsedS(string time, char delimiter)
    {
        string point = delimiter == ',' ? time : time.Replace(',', '.');
        return point.Contains(':', StringComparison.Ordinal)
            ? TimeSpan.TryParse(point, CultureInfo.InvariantCulture, out TimeSpan span)
                ? span.TotalSeconds
                : null
            : CsvNumbers.Number(point);
    }

    private static (double[] Seconds, DateTimeOffset? Begun)? Clock(
        MeterLogText text,
        string[] times,
        MeterLogTerms terms,
        FileProblems problems
    )
    {
        bool? dayFirst = terms.DayFirst ?? ProvedOrder(times);
        DateTimeOffset[] found = new DateTimeOffset[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            MeterLogTime read = MeterLogTime.Of(times[i], dayFirst, terms);
            if (read.At is { } at)
            {
                found[i] = at;
            }
            else
            {
                problems.Add(text.Rows[i].Line, null, times[i], read.What!, read.Remedy!);
                if (read.IsOfAllLines)
                {
                    return null;
                }
            }
        }

        return problems.Any || found.Length == 0 ? null : ([.. found.Select(at => (at - found[0]).TotalSeconds)], found[0]);
    }

    // a part above 12 can't be a month
    private static bool? ProvedOrder(string[] times)
    {
        int[][] parts =
        [
            .. times
                .Select(time => time.Split(' ')[0].Split('/'))
                .Where(parts => parts.Length == 3)
                .Select(parts =>
                    parts.Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0).ToArray()
                ),
        ];
        bool isDayFirst = parts.Any(part => part[0] is > 12 and <= 31);
        bool isMonthFirst = parts.Any(part => part[1] is > 12 and <= 31);
        return isDayFirst == isMonthFirst ? null : isDayFirst;
    }
}
