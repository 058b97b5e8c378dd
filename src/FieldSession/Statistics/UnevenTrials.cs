namespace FieldSession.Statistics;

/// <summary>
/// The exact distribution of the number of hits in independent trials that each have a chance of their own (Poisson's
/// binomial: S. D. Poisson, Recherches sur la probabilite des jugements, 1837), summed trial by trial. With one chance for
/// all it is the binomial. Worked example: chances 1/2 and 2/3: at least one hit 5/6, both 1/3.
/// </summary>
public static class UnevenTrials
{
    /// <summary>P(hits &gt;= <paramref name="hits"/>).</summary>
    /// <param name="hits">0 or more; beyond the number of trials the probability is 0.</param>
    /// <param name="chances">Each trial's chance of a hit, 0..1.</param>
    public static double PAtLeast(int hits, IReadOnlyList<double> chances)
    {
        double[] exactly = new double[chances.Count + 1];
        exactly[0] = 1;
        for (int trial = 0; trial < chances.Count; trial++)
        {
            for (int count = trial + 1; count > 0; count--)
            {
                exactly[count] = (exactly[count] * (1 - chances[trial])) + (exactly[count - 1] * chances[trial]);
            }

            exactly[0] *= 1 - chances[trial];
        }

        return exactly.Skip(Math.Max(hits, 0)).Sum();
    }
}
