namespace FieldSession.Comparing;

/// <summary>
/// A complete table of simulated levels, runs down and segments across; readings left out are held by what the others predict.
/// </summary>
internal sealed class SimulatedTable
{
    private readonly double[][] _levels;
    private readonly int[] _codes;
    private readonly Dictionary<int, int> _runsOfCode;

    /// <summary>A table.</summary>
    /// <param name="levels">Levels by run.</param>
    /// <param name="codes">The code of each run.</param>
    public SimulatedTable(double[][] levels, int[] codes)
    {
        (_levels, _codes) = (levels, codes);
        _runsOfCode = codes.CountBy(code => code).ToDictionary(code => code.Key, code => code.Value);
        Means = [.. levels.Select(run => run.Average())];
        Df = _runsOfCode.Values.Sum(runs => (runs - 1) * (Segments - 1));
        foreach (int code in _runsOfCode.Keys)
        {
            double[] columns = Columns(code);
            Sse += Enumerable.Range(0, codes.Length).Where(run => codes[run] == code).Sum(run => SquaresOf(run, columns));
        }
    }

    private SimulatedTable(SimulatedTable other, int run, int segment, double level, double lessSse)
    {
        (_codes, _runsOfCode, Df, Sse) = (other._codes, other._runsOfCode, other.Df - 1, other.Sse - lessSse);
        _levels = [.. other._levels];
        _levels[run] = [.. other._levels[run]];
        _levels[run][segment] = level;
        Means = [.. other.Means];
        Means[run] += (level - other._levels[run][segment]) / Segments;
    }

    /// <summary>Mean of every run.</summary>
    public double[] Means { get; }

    /// <summary>Segments of the table.</summary>
    public int Segments => _levels[0].Length;

    /// <summary>Sum of squared residuals inside the codes.</summary>
    public double Sse { get; }

    /// <summary>Its degrees of freedom.</summary>
    public int Df { get; }

    /// <summary>The table without a segment.</summary>
    public SimulatedTable WithoutSegment(int segment) =>
        new([.. _levels.Select(run => run.Where((_, s) => s != segment).ToArray())], _codes);

    /// <summary>The table without a run.</summary>
    public SimulatedTable WithoutRun(int run) => new([.. _levels.Where((_, r) => r != run)], [.. _codes.Where((_, r) => r != run)]);

    /// <summary>The table without each of its readings in turn; a code driven once gives none away.</summary>
    public IEnumerable<SimulatedTable> WithoutEachReading()
    {
        Dictionary<int, double[]> columns = _runsOfCode.Keys.ToDictionary(code => code, Columns);
        for (int run = 0; run < _codes.Length && Segments > 1 && Df > 1; run++)
        {
            int runs = _runsOfCode[_codes[run]];
            double free = (1 - 1.0 / runs) * (1 - 1.0 / Segments);
            for (int s = 0; s < Segments && runs > 1; s++)
            {
                double residual = Residual(run, s, columns[_codes[run]]);
                yield return new SimulatedTable(this, run, s, _levels[run][s] - residual / free, residual * residual / free);
            }
        }
    }

    // the mean of the code is behind its columns
    private double[] Columns(int code)
    {
        double[] columns = new double[Segments + 1];
        for (int run = 0; run < _codes.Length; run++)
        {
            for (int s = 0; s < Segments && _codes[run] == code; s++)
            {
                columns[s] += _levels[run][s] / _runsOfCode[code];
                columns[^1] += _levels[run][s] / _runsOfCode[code] / Segments;
            }
        }

        return columns;
    }

    private double SquaresOf(int run, double[] columns)
    {
        double sum = 0;
        for (int s = 0; s < Segments; s++)
        {
            double residual = Residual(run, s, columns);
            sum += residual * residual;
        }

        return sum;
    }

    private double Residual(int run, int segment, double[] columns) => _levels[run][segment] - Means[run] - columns[segment] + columns[^1];
}
