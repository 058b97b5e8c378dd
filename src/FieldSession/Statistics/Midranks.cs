namespace FieldSession.Statistics;

/// <summary>
/// Ranks from 1 upward; equal values share the mean of their ranks (M. G. Kendall, Biometrika 33, 1945).
/// Worked example: 5, 7, 7, 9 have the ranks 1, 2.5, 2.5, 4.
/// </summary>
public static class Midranks
{
    /// <summary>The ranks in the order of the values.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        double[] ranks = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            (int below, int equal) = (0, 0);
            foreach (double other in values)
            {
                below += other < values[i] ? 1 : 0;
                equal += other == values[i] ? 1 : 0;
            }

            ranks[i] = below + (equal + 1) / 2.0;
        }

        return ranks;
    }
}
