namespace FieldSession.Comparing;

/// <summary>Counts of the day: readings taken, spoilt and missed, by cause and by code, and what is worth saying about them.</summary>
internal static class DayCounts
{
    private const double WidthThatMattersDb = 1;
    private const int ManySpoilt = 3;

    /// <summary>The counts of the day.</summary>
    public static ReadingCounts Of(MeasuredDay day)
    {
        MeasuredLevel[] spoilt = [.. day.Levels.Where(level => level is { Spoilt: true, IsReplaced: false })];
        SortedDictionary<string, int> byCause = new(StringComparer.Ordinal);
        foreach (MeasuredLevel level in spoilt)
        {
            string cause = string.IsNullOrEmpty(level.Cause) ? "not said" : level.Cause;
            byCause[cause] = byCause.GetValueOrDefault(cause) + 1;
        }

        return new ReadingCounts(day.Levels.Count, spoilt.Length, day.Missed, byCause)
        {
            Replaced = day.Levels.Count(level => level.IsReplaced),
        };
    }

    /// <summary>The counts by code, in the order of first driving.</summary>
    public static IReadOnlyList<CodeReadings> ByCode(MeasuredDay day, DayTable table)
    {
        ILookup<string, MeasuredLevel> levels = day.Levels.ToLookup(level => level.Code);
        return
        [
            .. table.Codes.Select(
                (code, place) =>
                    new CodeReadings(
                        code,
                        table.Runs.Count(run => run.Code == place),
                        levels[code].Count(),
                        levels[code].Count(level => level is { Spoilt: true, IsReplaced: false }),
                        MeanWidthDb(levels[code])
                    )
                    {
                        Replaced = levels[code].Count(level => level.IsReplaced),
                    }
            ),
        ];
    }

    /// <summary>What the counts say: unequal leaving out, unequal wandering of the display.</summary>
    public static IEnumerable<string> Remarks(IReadOnlyList<CodeReadings> codes)
    {
        if (codes.Count < 2)
        {
            yield return ComparingWords.FewerThanTwoCodesDriven;
            yield break;
        }

        CodeReadings most = codes.MaxBy(code => code.Spoilt)!;
        CodeReadings least = codes.MinBy(code => code.Spoilt)!;
        if (most.Spoilt >= ManySpoilt && most.Spoilt >= 2 * least.Spoilt)
        {
            yield return ComparingWords.SpoiltReadingsDifferByCode(most, least);
        }

        CodeReadings[] wide = [.. codes.Where(code => code.MeanWidthDb is not null).OrderBy(code => code.MeanWidthDb)];
        if (wide.Length > 1 && wide[^1].MeanWidthDb - wide[0].MeanWidthDb > WidthThatMattersDb)
        {
            yield return ComparingWords.DisplayWanderedUnevenly(wide);
        }
    }

    private static double? MeanWidthDb(IEnumerable<MeasuredLevel> levels)
    {
        double[] widths = [.. levels.Where(level => !level.Spoilt && level.Class == MeasureClass.Steady).Select(level => level.WidthDb)];
        return widths.Length == 0 ? null : widths.Average();
    }
}
