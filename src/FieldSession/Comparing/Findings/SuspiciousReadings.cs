using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// Levels that are conspicuous on the loud side of their run and segment: externally studentised residual of the fit inside the code,
/// one-sided, Bonferroni over the levels of the class (R. D. Cook, S. Weisberg, Residuals and Influence in Regression, 1982, section
/// 2.2.2). The scatter is never taken for less than what the display's rounding makes, and a level within one step of what the others
/// predict is never listed: rounding alone can put it there (<see cref="DisplayStep"/>).
/// </summary>
public static class SuspiciousReadings
{
    /// <summary>Listed below this corrected p.</summary>
    public const double Level = 0.05;

    private const int LeastDf = 3;
    private const double FullLeverage = 1e-9;

    // what is left of a sum of squares below this share of it is the rounding of its numbers
    private const double RoundingShare = 1e-9;

    /// <summary>Every level of a class, most suspicious first; empty with fewer than 3 degrees of freedom. Pure.</summary>
    public static IReadOnlyList<SuspiciousReading> Ranked(MeasuredDay day, MeasureClass measureClass)
    {
        DayTable table = DayTable.Of(day);
        return Ranked(
            ClassView.Of(table, table.Valid, measureClass, new ComparisonTerms()),
            table,
            DisplayStep.Of(day, measureClass),
            _ => true
        );
    }

    /// <summary>The levels below <see cref="Level"/> only; p is not worked out for the others, of which a long day has very many.</summary>
    internal static IReadOnlyList<SuspiciousReading> Listed(ClassView? view, DayTable table, MeasuredDay day)
    {
        if (view is not { Model: ClassModel model, Class: MeasureClass measureClass } || model.Scatter.NuE < LeastDf)
        {
            return [];
        }

        double limit = StudentT.Quantile(1 - Level / model.Fits.Sum(fit => fit.Present), model.Scatter.NuE - 1);
        DisplayStep step = DisplayStep.Of(day, measureClass);
        return Ranked(view, table, step, one => one.T > limit && one.AwayDb > step.Db * (1 + RoundingShare));
    }

    private static IReadOnlyList<SuspiciousReading> Ranked(ClassView? view, DayTable table, DisplayStep step, Func<Residual, bool> isWanted)
    {
        if (view is not { Model: ClassModel model, Class: MeasureClass measureClass } || model.Scatter.NuE < LeastDf)
        {
            return [];
        }

        double sse = model.Fits.Sum(fit => fit.Rss);
        int levels = model.Fits.Sum(fit => fit.Present);
        List<SuspiciousReading> found = [];
        for (int k = 0; k < model.Fits.Count; k++)
        {
            foreach (Residual one in Studentised(model.Errors[k], sse, model.Scatter.NuE, step).Where(isWanted))
            {
                int run = table.Runs[model.Counted.RunsByCode[k][one.Row]].Number;
                string segment = table.Segments[model.Counted.Segments[one.Column]].Segment;
                double p = Math.Min(1, levels * StudentT.UpperTail(one.T, model.Scatter.NuE - 1));
                found.Add(new SuspiciousReading(run, segment, measureClass, one.T, p));
            }
        }

        return [.. found.OrderByDescending(reading => reading.StudentisedResidual)];
    }

    private static IEnumerable<Residual> Studentised(AdditiveErrors errors, double sse, double nuE, DisplayStep step)
    {
        AdditiveFit fit = errors.Fit;
        for (int row = 0; row < fit.Rows; row++)
        {
            for (int column = 0; column < fit.Columns; column++)
            {
                double free = fit.Has(row, column) ? 1 - errors.Leverage(row, column) : 0;
                if (free > FullLeverage && T(fit.Residual(row, column), free, sse, nuE, step) is { } t)
                {
                    yield return new Residual(row, column, t, fit.Residual(row, column) / free);
                }
            }
        }
    }

    /// <summary>The residual in standard deviations; null where there is no scatter to judge by.</summary>
    private static double? T(double residual, double free, double sse, double nuE, DisplayStep step)
    {
        double deleted = sse - residual * residual / free;
        double variance = Math.Max(deleted > sse * RoundingShare ? deleted / (nuE - 1) : 0, step.VarianceDb2) * free;
        return variance > 0 ? residual / Math.Sqrt(variance) : null;
    }

    /// <summary>How far a level lies from what the others predict.</summary>
    /// <param name="Row">Its run in the fit.</param>
    /// <param name="Column">Its segment in the fit.</param>
    /// <param name="T">In standard deviations.</param>
    /// <param name="AwayDb">In dB.</param>
    private readonly record struct Residual(int Row, int Column, double T, double AwayDb);
}

/// <summary>
/// The step that a meter's display goes by, seen from the numbers that were typed, and the scatter that its rounding makes in a level: a
/// value rounded to a step is a rectangle of variance step^2 / 12 (JCGM 100:2008, 4.3.7), the middle of a range with two ends rounded apart
/// half of it.
/// </summary>
/// <param name="Db">The step, dB; 0: the numbers go by no step (a computed level).</param>
/// <param name="VarianceDb2">Variance of a level by rounding alone, dB squared.</param>
internal sealed record DisplayStep(double Db, double VarianceDb2)
{
    private const double Slack = 1e-6;

    // from the coarsest that displays have; common practice, no source
    private static double[] Steps => [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

    /// <summary>The step of the readings of a class that count.</summary>
    public static DisplayStep Of(MeasuredDay day, MeasureClass measureClass)
    {
        MeasuredLevel[] levels = [.. day.Levels.Where(level => !level.Spoilt && level.Class == measureClass)];
        double step = Steps.FirstOrDefault(each =>
            Array.TrueForAll(levels, level => IsMultiple(level.LowDb, each) && IsMultiple(level.HighDb, each))
        );
        double ends = Array.Exists(levels, level => level.WidthDb <= 0) ? 12 : 24;
        return new DisplayStep(step, step * step / ends);
    }

    private static bool IsMultiple(double db, double step) => Math.Abs(db / step - Math.Round(db / step)) < Slack;
}
