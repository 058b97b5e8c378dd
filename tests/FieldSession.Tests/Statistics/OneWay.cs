using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

/// <summary>
/// One-way analysis of variance, and the variance components of equal groups: within s_w^2 (repeatability), between (MSb - MSw) / n
/// (ISO 5725-2). Worked example: NIST StRD SiRstv, F = 1.18046237440255.
/// </summary>
/// <param name="DfBetween">Groups - 1.</param>
/// <param name="DfWithin">Values - groups.</param>
/// <param name="SsBetween">Sum of squares of group means about the mean.</param>
/// <param name="SsWithin">Sum of squares of values about their group mean.</param>
/// <param name="MeanGroupSize">Size of a group; for unequal groups the n0 of the expected mean square.</param>
public sealed record OneWay(int DfBetween, int DfWithin, double SsBetween, double SsWithin, double MeanGroupSize)
{
    /// <summary>Mean square between groups.</summary>
    public double MsBetween => SsBetween / DfBetween;

    /// <summary>Mean square within groups.</summary>
    public double MsWithin => SsWithin / DfWithin;

    /// <summary>Ratio of the mean squares.</summary>
    public double F => MsBetween / MsWithin;

    /// <summary>Upper tail probability of <see cref="F"/>.</summary>
    public double P => FisherF.UpperTail(F, DfBetween, DfWithin);

    /// <summary>Share of the variation that lies between the groups.</summary>
    public double RSquared => SsBetween / (SsBetween + SsWithin);

    /// <summary>Variance of the groups themselves; 0 if the means differ less than the values allow.</summary>
    public double VarianceBetween => Math.Max(0, (MsBetween - MsWithin) / MeanGroupSize);

    /// <summary>Repeatability standard deviation.</summary>
    public double RepeatabilitySd => Math.Sqrt(MsWithin);

    /// <summary>Reproducibility standard deviation.</summary>
    public double ReproducibilitySd => Math.Sqrt(MsWithin + VarianceBetween);

    /// <summary>Analyses two groups or more with at least one value more than groups.</summary>
    public static OneWay Of(IReadOnlyList<double[]> groups)
    {
        int n = groups.Sum(g => g.Length);
        double origin = groups[0][0];
        double mean = groups.Sum(g => g.Sum(y => y - origin)) / n;
        double between = 0;
        double within = 0;
        foreach (double[] group in groups)
        {
            double groupMean = group.Average(y => y - origin);
            between += group.Length * (groupMean - mean) * (groupMean - mean);
            within += group.Sum(y => (y - origin - groupMean) * (y - origin - groupMean));
        }

        double squares = groups.Sum(g => (double)g.Length * g.Length);
        return new OneWay(groups.Count - 1, n - groups.Count, between, within, (n - squares / n) / (groups.Count - 1));
    }
}
