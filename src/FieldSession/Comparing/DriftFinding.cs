using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// How the level moved over the day on one and the same code (docs/formulas.md, "Drift"): the drift column's slope if it is in the model, else the
/// pooled slope inside the codes.
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
