using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>The level of exposure of one run over the compared segments.</summary>
/// <param name="Run">The run.</param>
/// <param name="Code">Its code.</param>
/// <param name="LevelDb">Energy mean of its fitted levels, dB.</param>
public sealed record RunLevel(int Run, string Code, double LevelDb);

/// <summary>
/// What a passenger is exposed to over the route: energy means of the fitted levels, run by run, and code minus reference of them. It is
/// ruled by the loudest segments and says nothing of its own about a code; steady segments only (docs/formulas.md, "Level of exposure").
/// </summary>
/// <param name="Runs">Runs of the code and the reference, in driven order.</param>
/// <param name="Overall">Code minus reference: the scatter of the run means as it came, no floor, no archive.</param>
/// <param name="ByTime">True: segments weigh by the seconds they last; false: those are not known, and each weighs the same.</param>
public sealed record RouteEnergy(IReadOnlyList<RunLevel> Runs, Estimate Overall, bool ByTime);

/// <summary>
/// Works out the level of exposure: in an additive fit a run's energy mean is its run effect and the energy mean of its code's segments.
/// </summary>
internal static class RouteEnergyFinding
{
    /// <summary>The level of exposure of a pair.</summary>
    public static RouteEnergy Of(PairLine pair, DayTable table)
    {
        ClassModel model = pair.Model;
        double?[] seconds = [.. model.Counted.Segments.Select(s => table.Segments[s].Seconds)];
        bool byTime = Array.TrueForAll(seconds, one => one is > 0);
        double[] weights = [.. seconds.Select(one => byTime ? one!.Value : 1)];
        double[] ofCode =
        [
            .. model.Fits.Select(fit => Decibels.EnergyMean([.. model.AllColumns.Select(column => fit.ColumnMean([column]))], weights)),
        ];
        double[] levels =
        [
            .. model.Fits.SelectMany((fit, code) => Enumerable.Range(0, fit.Rows).Select(row => fit.RowEffect(row) + ofCode[code])),
        ];
        int[] codes = [model.Counted.Codes[pair.First], model.Counted.Codes[pair.Second]];
        return new RouteEnergy(
            [
                .. model
                    .Runs.Select((run, place) => (run, levels[place]))
                    .Where(x => codes.Contains(x.run.Code))
                    .OrderBy(x => x.run.Number)
                    .Select(x => new RunLevel(x.run.Number, table.Codes[x.run.Code], x.Item2 + table.MeanDb)),
            ],
            Overall(pair, levels),
            byTime
        );
    }

    private static Estimate Overall(PairLine pair, double[] levels)
    {
        double difference = 0;
        double square = 0;
        for (int run = 0; run < levels.Length; run++)
        {
            double weight = pair.Contrast.Weights[run];
            difference += weight * levels[run];
            square += weight * weight;
        }

        // the levels differ from the run means by a constant per code, which the code columns take up: the scatter is the same
        return pair.Model.Scatter.RunVariance is double variance
            ? LineInterval.Of(difference, Math.Sqrt(square * variance), pair.Model.Scatter.NuRun, pair.MarginDb, pair.Model.Limits)
            : new Estimate(difference);
    }
}
