using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>
/// The mean level of every run over the compared segments of one class, as the run model sees it: gaps filled by the additive fit of runs
/// and segments (docs/formulas.md, "Run model"), so that a run is not loud because a quiet segment of it was spoilt.
/// </summary>
/// <param name="Class">The class; null: all segments.</param>
/// <param name="Runs">The runs that count, in driven order.</param>
/// <param name="Drift">The drift per hour; null without times, or if no code was driven twice.</param>
public sealed record RunLevels(MeasureClass? Class, IReadOnlyList<RunMean> Runs, DriftPerHour? Drift)
{
    /// <summary>The levels of a day from the readings that count; null: fewer than two codes can be compared.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="measureClass">The class; null: all segments.</param>
    /// <exception cref="ArgumentException">A run with two codes, a segment with two classes, or a level that is not a number.</exception>
    public static RunLevels? Of(MeasuredDay day, MeasureClass? measureClass)
    {
        ArgumentNullException.ThrowIfNull(day);
        DayTable table = DayTable.Of(day);
        if (ClassView.Of(table, table.Valid, measureClass, new ComparisonTerms()) is not { Model: { } model })
        {
            return null;
        }

        double dayDb = day.Levels.Average(level => level.LevelDb);
        IEnumerable<RunMean> runs = model.Runs.Zip(
            model.RunMeans,
            (run, meanDb) => new RunMean(run.Number, table.Codes[run.Code], table.TimesKnown ? run.Hours : null, dayDb + meanDb)
        );
        return new RunLevels(measureClass, [.. runs.OrderBy(run => run.Run)], table.TimesKnown ? DriftFinding.Of(model) : null);
    }
}

/// <summary>The mean level of a run.</summary>
/// <param name="Run">Its number.</param>
/// <param name="Code">Its code.</param>
/// <param name="Hours">From the first run's start to its middle, hours; null: not known.</param>
/// <param name="LevelDb">Mean level over the compared segments, dB(A).</param>
public sealed record RunMean(int Run, string Code, double? Hours, double LevelDb);

/// <summary>Whether what was spoilt is spread evenly: uneven flags can make a difference that is none.</summary>
public static class SpoiltBalance
{
    /// <summary>The warnings in words, codes only; empty: even enough.</summary>
    public static IEnumerable<string> Warnings(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        double limit = study.Plan?.Limits.Of(FurtherLimits.SpoiltUneven) ?? FurtherLimits.SpoiltUneven.Default;
        (SpecCode Code, double Percent)[] codes =
        [
            .. from runs in study.Runs.GroupBy(run => run.Code)
            let readings = runs.SelectMany(run => run.Readings).ToArray()
            where readings.Length > 0
            select (runs.Key, 100.0 * readings.Count(reading => reading.LeftOut) / readings.Length),
        ];
        if (codes.Length > 1 && codes.Max(code => code.Percent) - codes.Min(code => code.Percent) > limit + 1e-9)
        {
            yield return ComparingWords.SpoiltReadingsAreUneven(string.Join(", ", codes.Select(code => $"{code.Code} {code.Percent:0} %")));
        }

        foreach (string empty in Empty(study))
        {
            yield return empty;
        }
    }

    private static IEnumerable<string> Empty(Study study) =>
        from segment in study.Plan?.Route ?? []
        from code in study.Runs.Where(run => !run.IsOn).Select(run => run.Code).Distinct()
        let readings = study
            .Runs.Where(run => run.Code == code)
            .SelectMany(run => run.Readings)
            .Where(reading => reading.Segment == segment.Number)
            .ToArray()
        where readings.Length > 0 && readings.All(reading => reading.LeftOut)
        select ComparingWords.EveryReadingIsSpoilt(code, segment.Name);
}
