namespace FieldSession.Statistics;

/// <summary>
/// The Brier score of stated probabilities: mean of (p - outcome)^2 (G. W. Brier, Monthly Weather Review 78, 1950), its skill against
/// "always one half" (0.25), and Murphy's decomposition brier = reliability - resolution + uncertainty, one bin per stated probability
/// (A. H. Murphy, J. Appl. Meteorology 12, 1973). Worked example: 0.1, 0.9, 0.8, 0.3 with outcomes 0, 1, 1, 0: 0.0375.
/// </summary>
public static class Brier
{
    /// <summary>The score and its parts.</summary>
    /// <param name="Count">Predictions.</param>
    /// <param name="Hits">Predictions on the right side of one half.</param>
    /// <param name="Score">0 best, 1 worst.</param>
    /// <param name="Skill">1 - score / 0.25: 1 best, 0 as good as a coin.</param>
    /// <param name="Reliability">Mean squared distance of stated probabilities from what came true.</param>
    /// <param name="Resolution">How far what came true differs between stated probabilities.</param>
    /// <param name="Uncertainty">Share times one minus share of what came true.</param>
    public readonly record struct Result(
        int Count,
        int Hits,
        double Score,
        double Skill,
        double Reliability,
        double Resolution,
        double Uncertainty
    );

    /// <summary>The score of one prediction or more; null of none.</summary>
    public static Result? Of(IReadOnlyList<(double Probability, bool Outcome)> predictions)
    {
        int n = predictions.Count;
        if (n == 0)
        {
            return null;
        }

        double score = predictions.Average(x => Square(x.Probability - (x.Outcome ? 1 : 0)));
        double share = (double)predictions.Count(x => x.Outcome) / n;
        double reliability = 0;
        double resolution = 0;
        foreach (IGrouping<double, (double Probability, bool Outcome)> bin in predictions.GroupBy(x => x.Probability))
        {
            double shareHere = (double)bin.Count(x => x.Outcome) / bin.Count();
            reliability += bin.Count() * Square(bin.Key - shareHere) / n;
            resolution += bin.Count() * Square(shareHere - share) / n;
        }

        int hits = predictions.Count(x => x.Outcome ? x.Probability > 0.5 : x.Probability < 0.5);
        return new Result(n, hits, score, 1 - score / 0.25, reliability, resolution, share * (1 - share));
    }

    private static double Square(double x) => x * x;
}

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
