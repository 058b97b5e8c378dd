using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>How many more runs per code an open verdict needs.</summary>
/// <param name="AsSeen">If difference and scatter stay as seen: 1..10; null: not within 10. 0 in a plain design only, where the verdict is
/// settled.</param>
/// <param name="Cautious">The same with the scatter at its upper 80 % limit.</param>
/// <param name="Chance">The chance, 0..1, that so many more runs settle an open verdict; null: it is settled, or not within 10.</param>
public sealed record MoreRuns(int? AsSeen, int? Cautious, double? Chance)
{
    /// <summary>Further ahead than this no promise is made.</summary>
    private const int Most = 10;
    private const double CautiousShare = 0.20;
    private const int ScattersTried = 20;

    // what the normal distribution asks for at the least at 5 %, and every t distribution and every smaller level with it
    private const double LeastTwoSided = 1.9599;
    private const double LeastOneSided = 1.6448;

    /// <summary>
    /// Counts them from the standard error of the difference itself, so that drift column and filled gaps are in it: it shrinks as
    /// sqrt(1/(nA + j) + 1/(nB + j)) does, with two more degrees of freedom for every j (docs/formulas.md, "How many more").
    /// </summary>
    /// <param name="pair">The pair.</param>
    /// <param name="levels">The levels that the words after so many more runs a code will need.</param>
    internal static MoreRuns? Of(PairLine pair, Func<int, WordLevels> levels) =>
        pair.Overall is { StandardErrorDb: > 0 and double error, Df: double df } ? Of(pair, levels, isSettled: false, error, df) : null;

    /// <summary>
    /// The same as if the day were complete and had no drift column: standard error s sqrt(1/(nA + j) + 1/(nB + j)), degrees of freedom of
    /// the runs.
    /// </summary>
    internal static MoreRuns? OfPlainDesign(PairLine pair, Func<int, WordLevels> levels, bool isSettled) =>
        pair.Model.Scatter.RunVarianceUsed is > 0 and double variance
            ? Of(pair, levels, isSettled, Math.Sqrt(variance * RunsShare(pair, 0)), pair.Model.Scatter.NuUsed)
            : null;

    private static MoreRuns? Of(PairLine pair, Func<int, WordLevels> levels, bool isSettled, double errorDb, double df)
    {
        if (pair.Overall.HasNoUsableInterval || pair.ConfoundedWith is not null)
        {
            return null;
        }

        double nu = pair.Model.Scatter.NuUsed;
        Ahead asSeen = new(pair, levels, errorDb, df);
        Ahead cautious = new(pair, levels, errorDb * Math.Sqrt(nu / ChiSquare.Quantile(CautiousShare, nu)), df);
        int? seen = isSettled ? 0 : asSeen.Fewest(1);
        return new MoreRuns(seen, cautious.Fewest(isSettled ? 0 : 1), seen > 0 ? asSeen.Chance(seen.Value) : null);
    }

    private static double RunsShare(PairLine pair, int more) =>
        1.0 / (pair.Model.RunsOf(pair.First) + more) + 1.0 / (pair.Model.RunsOf(pair.Second) + more);

    /// <summary>What lies ahead of a pair whose difference has this error now.</summary>
    private sealed record Ahead(PairLine Pair, Func<int, WordLevels> Levels, double NowDb, double Df)
    {
        private double SizeDb => Math.Abs(Pair.Overall.DifferenceDb);

        public int? Fewest(int from)
        {
            for (int more = from; more <= Most; more++)
            {
                if (IsSettled(ErrorDb(more), Df + 2 * more, Levels(more)))
                {
                    return more;
                }
            }

            return null;
        }

        /// <summary>
        /// The chance that the difference after more runs lies where the words are settled: it is spread about today's with the variance
        /// that today's loses (predictive power: D. J. Spiegelhalter, L. S. Freedman, P. R. Blackburn, Controlled Clinical Trials 7, 1986),
        /// averaged over the true scatters that today's leaves open.
        /// </summary>
        public double Chance(int more) =>
            Enumerable.Range(0, ScattersTried).Average(i => Chance(more, Df / ChiSquare.Quantile((i + 0.5) / ScattersTried, Df)));

        // 'scatter': the true variance in units of today's
        private double Chance(int more, double scatter)
        {
            double shrunk = Math.Sqrt(RunsShare(Pair, more) / RunsShare(Pair, 0));
            double error = NowDb * shrunk * Math.Sqrt((Df + 2 * more * scatter) / (Df + 2 * more));
            double spread = NowDb * Math.Sqrt(scatter * (1 - shrunk * shrunk));
            double shown = StudentT.Quantile(1 - Levels(more).Difference / 2, Df + 2 * more) * error;
            double within = Pair.MarginDb - StudentT.Quantile(1 - Levels(more).Equivalence, Df + 2 * more) * error;
            if (within >= shown)
            {
                return 1;
            }

            double Below(double limitDb) => StudentT.Cdf((limitDb - SizeDb) / spread, double.PositiveInfinity);
            return 1 - Below(shown) + Below(-shown) + (within > 0 ? Below(within) - Below(-within) : 0);
        }

        private double ErrorDb(int more) => NowDb * Math.Sqrt(RunsShare(Pair, more) / RunsShare(Pair, 0));

        /// <summary>Asked through the tails, which is the same as through the quantiles and several times cheaper.</summary>
        private bool IsSettled(double errorDb, double df, WordLevels levels)
        {
            double roomDb = Pair.MarginDb - SizeDb;
            return (SizeDb > LeastTwoSided * errorDb && StudentT.TwoSidedP(SizeDb / errorDb, df) < levels.Difference)
                || (roomDb > LeastOneSided * errorDb && StudentT.UpperTail(roomDb / errorDb, df) < levels.Equivalence);
        }
    }
}

/// <summary>
/// The exact randomisation test of a pair's run means, an extra line beside the verdict (<see cref="OrderRandomisation"/>): it needs no
/// normal scatter, but takes no drift out and can say little with few runs (0.029 at best with 4 against 4), so that it is offered from 8
/// runs on.
/// </summary>
/// <param name="P">Share of all driving orders that part the means at least as far.</param>
/// <param name="Orders">How many orders there are with these numbers of runs.</param>
public sealed record OrderTest(double P, int Orders)
{
    private const int FewestRuns = 8;

    /// <summary>The test; null with fewer than 8 runs, with more orders than can be enumerated, or for runs side by side.</summary>
    internal static OrderTest? Of(PairLine pair)
    {
        ClassModel model = pair.Model;
        if (model.Design.Parallel || model.RunsOf(pair.First) + model.RunsOf(pair.Second) < FewestRuns)
        {
            return null;
        }

        return OrderRandomisation.Of(model.RunMeansOf(pair.First), model.RunMeansOf(pair.Second)) is { } test
            ? new OrderTest(test.P, test.Orders)
            : null;
    }
}
