using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>What an order of runs can and cannot tell of one place against R, before a run is driven.</summary>
/// <param name="Place">The place compared with R.</param>
/// <param name="Runs">Runs of it.</param>
/// <param name="MeanRun">Mean number of its runs in the order, from 1.</param>
/// <param name="ReferenceMeanRun">Mean number of the runs of R.</param>
/// <param name="DriftShift">
/// What a steady drift of 1 dB over the whole order shifts the difference by, dB, with the weights that the comparison will use; 0: it
/// cancels or is taken out.
/// </param>
/// <param name="BentShift">The same for a drift of 1 dB that runs as the square of time, slow at first; dB.</param>
/// <param name="SmallestDb">
/// The smallest true difference that is shown with the wanted chance at the level that the word needs among all that is asked at once, dB;
/// null: no spread is left to judge by.
/// </param>
/// <param name="Df">Degrees of freedom left.</param>
/// <param name="DriftInModel">Whether the comparison takes a steady drift out besides (docs/formulas.md, "Run model").</param>
/// <param name="ConfoundedWith">What cannot be told apart from the code, such as "car"; null: nothing of what the order holds.</param>
public sealed record OrderSize(
    Place Place,
    int Runs,
    double MeanRun,
    double ReferenceMeanRun,
    double DriftShift,
    double BentShift,
    double? SmallestDb,
    int Df,
    bool DriftInModel,
    string? ConfoundedWith
)
{
    private const double Nothing = 1e-9;

    /// <summary>How many comparisons are asked at once, from 1.</summary>
    public int Comparisons { get; init; } = 1;

    /// <summary>Whether a steady drift over the order leaves the difference as it is.</summary>
    public bool DriftCancels => Math.Abs(DriftShift) < Nothing;

    /// <summary>Every place of an order against R, in the design that the comparison will use; empty where the order lacks R.</summary>
    /// <param name="order">The runs by place.</param>
    /// <param name="cars">The car of each run; null: one car.</param>
    /// <param name="terms">How well runs and readings repeat, and the level of all that is asked at once.</param>
    /// <param name="asksAllPairs">Whether the plan asks for every pair of codes, and not only for each candidate against R.</param>
    public static IReadOnlyList<OrderSize> Of(
        IReadOnlyList<Place> order,
        IReadOnlyList<string>? cars,
        SizeTerms terms,
        bool asksAllPairs = false
    )
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(terms);
        if (!order.Contains(Place.Reference))
        {
            return [];
        }

        DrivenRun[] runs =
        [
            .. order.Select((place, run) => new DrivenRun(run + 1, place.Index, run, cars?[run], null, null)).OrderBy(run => run.Code),
        ];
        int[] codes = [.. runs.Select(run => run.Code).Distinct()];
        RunDesign design = RunDesign.Of(runs, codes.Length, false, null);
        double[][] weights = [.. codes.Skip(1).Select((_, i) => design.Columns.Weights(Contrast(codes.Length, i + 1)))];
        int asked = asksAllPairs ? codes.Length * (codes.Length - 1) / 2 : weights.Length;
        double alone = design.Df < 1 ? terms.Alpha : LevelAlone(weights, asked, design.Df, terms.Alpha);
        return
        [
            .. codes
                .Skip(1)
                .Select((code, i) => Of(code, weights[i], runs, design, terms with { Alpha = alone }) with { Comparisons = asked }),
        ];
    }

    /// <summary>
    /// The level that each comparison's own p has to stay below: Dunnett's for candidates against R, else the level's share of each.
    /// </summary>
    private static double LevelAlone(double[][] weights, int asked, int df, double level)
    {
        if (asked < 2)
        {
            return level;
        }

        double[]? loadings = asked == weights.Length ? OneFactor.Loadings(Correlations(weights)) : null;
        return loadings is null ? level / asked : StudentT.TwoSidedP(ManyToOneT.Limit(level, loadings, df), df);
    }

    private static double[,] Correlations(double[][] weights)
    {
        double[,] correlations = new double[weights.Length, weights.Length];
        for (int i = 0; i < weights.Length; i++)
        {
            for (int j = 0; j < weights.Length; j++)
            {
                double sizes = Math.Sqrt(Dot(weights[i], weights[i]) * Dot(weights[j], weights[j]));
                correlations[i, j] = Math.Clamp(Dot(weights[i], weights[j]) / sizes, -1, 1);
            }
        }

        return correlations;
    }

    private static OrderSize Of(int code, double[] weights, DrivenRun[] runs, RunDesign design, SizeTerms terms)
    {
        double standardError = terms.RunMeanSdDb * Math.Sqrt(Dot(weights, weights));
        double[] time = [.. runs.Select(run => run.Hours / Math.Max(1, runs.Length - 1))];
        return new OrderSize(
            new Place(code),
            runs.Count(run => run.Code == code),
            MeanRunOf(runs, code),
            MeanRunOf(runs, 0),
            Dot(weights, time),
            Dot(weights, [.. time.Select(t => t * t)]),
            design.Df < 1 ? null : NoncentralT.NoncentralityForPower(terms.Power, design.Df, terms.Alpha) * standardError,
            design.Df,
            design.DriftColumn is not null,
            design.ConfoundedWith(weights)
        );
    }

    private static double[] Contrast(int codes, int code) =>
        [
            .. Enumerable
                .Range(0, codes)
                .Select(i =>
                    i == code ? 1.0
                    : i == 0 ? -1.0
                    : 0
                ),
        ];

    private static double MeanRunOf(DrivenRun[] runs, int code) => runs.Where(run => run.Code == code).Average(run => run.Number);

    private static double Dot(double[] one, double[] other) => one.Zip(other, (x, y) => x * y).Sum();
}
