using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>What a word says, without its wording.</summary>
/// <param name="ShowsDifference">A difference.</param>
/// <param name="ShowsEquivalence">Less than the margin.</param>
/// <param name="IsLarger">More than the margin.</param>
internal readonly record struct WordCode(bool ShowsDifference, bool ShowsEquivalence, bool IsLarger);

/// <summary>The word on a pair from complete tables of one design, by the rules of <see cref="VerdictWords"/>.</summary>
internal sealed class WordOfRuns
{
    private readonly PairLine _pair;
    private readonly WordLevels _levels;
    private readonly Dictionary<double, (double Difference, double Equivalence)> _limits = [];
    private readonly Weighed _whole;
    private readonly Weighed?[] _without;

    /// <summary>The word on days such as that of a pair.</summary>
    public WordOfRuns(PairLine pair, DayTable table, WordLevels levels)
    {
        _pair = pair;
        _levels = levels;
        DrivenRun[] runs = pair.Model.Runs;
        _whole = Design(runs, table)!;
        _without = [.. runs.Select((_, left) => Design([.. runs.Where((_, run) => run != left)], table))];
    }

    /// <summary>The word.</summary>
    public WordCode Of(SimulatedTable day) => Word(day, _whole);

    /// <summary>The word without a run; null: too little is left for one.</summary>
    public WordCode? Without(SimulatedTable day, int run) => _without[run] is { } design ? Word(day.WithoutRun(run), design) : null;

    /// <summary>The difference in standard errors: how clearly it shows.</summary>
    public double Clearness(SimulatedTable day)
    {
        (double difference, double error, _) = Estimate(day, _whole);
        return error > 0 ? Math.Abs(difference) / error : 0;
    }

    private WordCode Word(SimulatedTable day, Weighed design)
    {
        (double difference, double error, double df) = Estimate(day, design);
        (double t, double tOneSided) = Limits(df);
        double size = Math.Abs(difference);
        return new WordCode(size > t * error, size + tOneSided * error < _pair.MarginDb, size - t * error >= _pair.MarginDb);
    }

    private (double DifferenceDb, double ErrorDb, double Df) Estimate(SimulatedTable day, Weighed design)
    {
        double difference = 0;
        double square = 0;
        for (int run = 0; run < design.Weights.Length; run++)
        {
            difference += design.Weights[run] * day.Means[run];
            square += design.Weights[run] * design.Weights[run];
        }

        Scatter scatter = _pair.Model.Scatter.Again(design.Columns.Rss(day.Means), design.Df, day.Sse, day.Df, 1.0 / day.Segments);
        return (difference, Math.Sqrt(square * (scatter.RunVarianceUsed ?? 0)), scatter.NuUsed);
    }

    private (double Difference, double Equivalence) Limits(double df)
    {
        if (!_limits.TryGetValue(df, out (double, double) limits))
        {
            limits = (StudentT.Quantile(1 - _levels.Difference / 2, df), StudentT.Quantile(1 - _levels.Equivalence, df));
            _limits.Add(df, limits);
        }

        return limits;
    }

    private Weighed? Design(DrivenRun[] runs, DayTable table)
    {
        int[] codes = [.. runs.Select(run => run.Code).Distinct()];
        (int first, int second) = (
            Array.IndexOf(codes, _pair.Model.Counted.Codes[_pair.First]),
            Array.IndexOf(codes, _pair.Model.Counted.Codes[_pair.Second])
        );
        if (first < 0 || second < 0)
        {
            return null;
        }

        RunDesign design = RunDesign.Of(runs, codes.Length, table.TimesKnown, null);
        double[] contrast = new double[codes.Length];
        (contrast[first], contrast[second]) = (1, -1);
        double[] weights = design.Columns.Weights(contrast);
        bool hasWord = design.Df + (_pair.Model.Scatter.PriorUsed ? 1 : 0) > 1 && design.ConfoundedWith(weights) is null;
        return hasWord ? new Weighed(design.Columns, weights, design.Df) : null;
    }

    /// <summary>A design with the pair's weights.</summary>
    private sealed record Weighed(OrthonormalColumns Columns, double[] Weights, int Df);
}
