using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// How the level moved over the day on one and the same code (docs/formulas.md, "Drift"): the drift column's slope if it is in the model,
/// else the pooled slope inside the codes.
/// </summary>
internal static class DriftFinding
{
    /// <summary>The drift; null if no code was driven at two times.</summary>
    public static DriftPerHour? Of(ClassModel model)
    {
        if (model.Design.DriftColumn is int column)
        {
            return Slope(model.Design.Columns, column, model.RunMeans, model.Scatter.RunVariance, model.Scatter.NuRun);
        }

        OrthonormalColumns columns = RunDesign.CodesAndSessions(model.Runs);
        if (!columns.TryAdd(RunDesign.TimesInSession(model.Runs)))
        {
            return null;
        }

        int df = columns.Rows - columns.Count;
        return Slope(columns, columns.Count - 1, model.RunMeans, df > 0 ? columns.Rss(model.RunMeans) / df : null, df);
    }

    /// <summary>Mean time of the first code minus mean time of the second, hours.</summary>
    public static double OrderLeverHours(PairLine pair)
    {
        double MeanTime(int place)
        {
            int code = pair.Model.Counted.Codes[place];
            return pair.Model.Runs.Where(run => run.Code == code).Average(run => run.Hours);
        }

        return MeanTime(pair.First) - MeanTime(pair.Second);
    }

    private static DriftPerHour Slope(OrthonormalColumns columns, int column, double[] means, double? variance, int df)
    {
        double[] contrast = new double[column + 1];
        contrast[column] = 1;
        double[] weights = columns.Weights(contrast);
        double slope = 0;
        double square = 0;
        for (int run = 0; run < weights.Length; run++)
        {
            slope += weights[run] * means[run];
            square += weights[run] * weights[run];
        }

        double? standardError = variance is double v ? Math.Sqrt(v * square) : null;
        return new DriftPerHour(slope, standardError, df > 0 ? df : null);
    }
}

/// <summary>
/// Does the difference of a pair depend on the segment (docs/formulas.md, "Segments")? F test of the additive model of both codes together
/// against the fits inside each code; the denominator is the reading variance of all codes.
/// </summary>
internal static class InteractionFinding
{
    /// <summary>The test; null without degrees of freedom or without any scatter.</summary>
    public static Interaction? Of(PairLine pair, DayTable table)
    {
        ClassModel model = pair.Model;
        if (model.Scatter.ReadingVariance is not > 0)
        {
            return null;
        }

        (AdditiveFit first, AdditiveFit second) = (model.Fits[pair.First], model.Fits[pair.Second]);
        int[] rows = [.. model.Counted.RunsByCode[pair.First], .. model.Counted.RunsByCode[pair.Second]];
        AdditiveFit together = AdditiveFit.Of(rows.Length, first.Columns, ClassModel.Cells(table, model.Counted, rows));
        int df = together.Df - first.Df - second.Df;
        if (df <= 0)
        {
            return null;
        }

        double f = Math.Max(0, together.Rss - first.Rss - second.Rss) / df / model.Scatter.ReadingVariance.Value;
        return new Interaction(f, df, model.Scatter.NuE, FisherF.UpperTail(f, df, model.Scatter.NuE));
    }
}
