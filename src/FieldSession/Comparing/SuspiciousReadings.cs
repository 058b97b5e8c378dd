using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// Levels that stand out on the loud side of their run and segment: externally studentised residual of the fit inside the code, one-sided,
/// Bonferroni over the levels of the class (R. D. Cook, S. Weisberg, Residuals and Influence in Regression, 1982, section 2.2.2).
/// </summary>
public static class SuspiciousReadings
{
    /// <summary>Listed below this corrected p.</summary>
    public const double Level = 0.05;

    private const int LeastDf = 3;
    private const double FullLeverage = 1e-9;

    /// <summary>Every level of a class, most suspicious first; empty with fewer than 3 degrees of freedom. Pure.</summary>
    public static IReadOnlyList<SuspiciousReading> Ranked(MeasuredDay day, MeasureClass measureClass)
    {
        DayTable table = DayTable.Of(day);
        return Ranked(ClassView.Of(table, table.Valid, measureClass, new ComparisonTerms()), table, double.NegativeInfinity);
    }

    /// <summary>The levels below <see cref="Level"/> only; p is not worked out for the others, of which a long day has very many.</summary>
    internal static IReadOnlyList<SuspiciousReading> Listed(ClassView? view, DayTable table)
    {
        if (view?.Model is not ClassModel model || model.Scatter.NuE < LeastDf)
        {
            return [];
        }

        double limit = StudentT.Quantile(1 - Level / model.Fits.Sum(fit => fit.Present), model.Scatter.NuE - 1);
        return Ranked(view, table, limit);
    }

    private static IReadOnlyList<SuspiciousReading> Ranked(ClassView? view, DayTable table, double leastT)
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
            foreach ((int row, int column, double t) in Studentised(model.Errors[k], sse, model.Scatter.NuE).Where(x => x.T > leastT))
            {
                int run = table.Runs[model.Counted.RunsByCode[k][row]].Number;
                string segment = table.Segments[model.Counted.Segments[column]].Segment;
                double p = Math.Min(1, levels * StudentT.UpperTail(t, model.Scatter.NuE - 1));
                found.Add(new SuspiciousReading(run, segment, measureClass, t, p));
            }
        }

        return [.. found.OrderByDescending(reading => reading.StudentisedResidual)];
    }

    private static IEnumerable<(int Row, int Column, double T)> Studentised(AdditiveErrors errors, double sse, double nuE)
    {
        AdditiveFit fit = errors.Fit;
        for (int row = 0; row < fit.Rows; row++)
        {
            for (int column = 0; column < fit.Columns; column++)
            {
                double free = fit.Has(row, column) ? 1 - errors.Leverage(row, column) : 0;
                double residual = fit.Residual(row, column);
                double variance = free > FullLeverage ? (sse - residual * residual / free) / (nuE - 1) * free : 0;
                if (variance > 0)
                {
                    yield return (row, column, residual / Math.Sqrt(variance));
                }
            }
        }
    }
}
