namespace FieldSession.Comparing;

/// <summary>
/// The mean level of every run over the compared segments of one class, as the run model sees it: gaps filled by the additive fit of runs and segments
/// (docs/formulas.md, "Run model"), so that a run is not loud because a quiet segment of it was spoilt.
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
        IEnumerable<RunMean> runs = model.Runs.Zip(model.RunMeans, (run, meanDb) => new RunMean(
            run.Number, table.Codes[run.Code], table.TimesKnown ? run.Hours : null, dayDb + meanDb));
        return new RunLevels(measureClass, [.. runs.OrderBy(run => run.Run)], table.TimesKnown ? DriftFinding.Of(model) : null);
    }
}

/// <summary>The mean level of a run.</summary>
/// <param name="Run">Its number.</param>
/// <param name="Code">Its code.</param>
/// <param name="Hours">From the first run's start to its middle, hours; null: not known.</param>
/// <param name="LevelDb">Mean level over the compared segments, dB(A).</param>
public sealed record RunMean(int Run, string Code, double? Hours, double LevelDb);
