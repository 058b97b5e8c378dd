namespace FieldSession.Statistics;

/// <summary>
/// Loadings b_i whose products are given correlations, r_ij = b_i b_j: exact for comparisons with one control in a plain design, least
/// squares else (J. C. Hsu, Journal of Computational and Graphical Statistics 1, 1992). Worked example: correlations 0.48, 0.42, 0.56 have
/// the loadings 0.6, 0.8, 0.7.
/// </summary>
public static class OneFactor
{
    private const double MostOff = 0.01;
    private const double LargestLoading = 0.995;
    private const int MostRounds = 500;

    /// <summary>The loadings; null: no loadings come within 0.01 of every correlation.</summary>
    /// <param name="correlations">Symmetric, two rows or more.</param>
    public static double[]? Loadings(double[,] correlations)
    {
        ArgumentNullException.ThrowIfNull(correlations);
        int count = correlations.GetLength(0);
        double[] loadings = [.. Enumerable.Range(0, count).Select(i => Start(correlations, i))];
        for (int round = 0; round < MostRounds; round++)
        {
            double moved = 0;
            for (int i = 0; i < count; i++)
            {
                double next = Math.Clamp(Best(correlations, loadings, i), -LargestLoading, LargestLoading);
                moved = Math.Max(moved, Math.Abs(next - loadings[i]));
                loadings[i] = next;
            }

            if (moved < 1e-12)
            {
                break;
            }
        }

        return Enumerable
            .Range(0, count)
            .All(i => Enumerable.Range(0, i).All(j => Math.Abs(loadings[i] * loadings[j] - correlations[i, j]) <= MostOff))
            ? loadings
            : null;
    }

    private static double Start(double[,] correlations, int i)
    {
        double towardsFirst = i == 0 ? 1 : correlations[i, 0];
        double largest = Enumerable.Range(0, correlations.GetLength(0)).Where(j => j != i).Max(j => Math.Abs(correlations[i, j]));
        return Math.Sign(towardsFirst) * Math.Sqrt(largest);
    }

    private static double Best(double[,] correlations, double[] loadings, int i)
    {
        (double above, double below) = (0, 0);
        for (int j = 0; j < loadings.Length; j++)
        {
            if (j != i)
            {
                above += correlations[i, j] * loadings[j];
                below += loadings[j] * loadings[j];
            }
        }

        return below > 0 ? above / below : 0;
    }
}
