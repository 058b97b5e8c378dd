namespace FieldSession.Statistics;

/// <summary>
/// Least-squares fit y = row effect + column effect to a table with gaps. Whichever side is longer is eliminated
/// (<see cref="ReducedSystem"/>), so the cost is linear in it. What the effects are worth says <see cref="AdditiveErrors"/>.
/// Worked example: rows (1, 2, -) and (3, -, 5): fitted gaps 4 and 3.
/// </summary>
public sealed class AdditiveFit
{
    private readonly double[] _values;
    private readonly double[] _rowEffects;
    private readonly double[] _columnEffects;

    private AdditiveFit(int rows, int columns, double[] values)
    {
        Rows = rows;
        Columns = columns;
        _values = values;
        Cells = Incidence.Of(rows, columns, values);
        Reduced = ReducedSystem.Of(Cells);
        _rowEffects = new double[rows];
        _columnEffects = new double[columns];
        Solve();
        SumUp();
    }

    /// <summary>Rows of the table.</summary>
    public int Rows { get; }

    /// <summary>Columns of the table.</summary>
    public int Columns { get; }

    /// <summary>Cells with a value.</summary>
    public int Present => Cells.Present;

    /// <summary>Sum of squared residuals; sums that are rounding errors only count as 0.</summary>
    public double Rss { get; private set; }

    /// <summary>Degrees of freedom of <see cref="Rss"/>.</summary>
    public int Df => Present - (Rows + Columns - 1);

    /// <summary>Which cells have a value.</summary>
    internal Incidence Cells { get; }

    /// <summary>What was solved.</summary>
    internal ReducedSystem Reduced { get; }

    /// <summary>Fits the table. Every row and column has a value, and they hang together through the cells present.</summary>
    /// <param name="rows">1 or more.</param>
    /// <param name="columns">1 or more.</param>
    /// <param name="values">The cells row by row, NaN for a gap; best centred near 0.</param>
    /// <exception cref="ArgumentException">The table falls apart into pieces that no row or column connects.</exception>
    public static AdditiveFit Of(int rows, int columns, double[] values) => new(rows, columns, values);

    /// <summary>The fitted value of any cell, gaps included.</summary>
    public double Fitted(int row, int column) => _rowEffects[row] + _columnEffects[column];

    /// <summary>Whether a cell has a value.</summary>
    public bool Has(int row, int column) => !double.IsNaN(_values[row * Columns + column]);

    /// <summary>Value minus fitted value; NaN for a gap.</summary>
    public double Residual(int row, int column) => _values[row * Columns + column] - Fitted(row, column);

    /// <summary>The effect of a row; over all rows they add up to 0.</summary>
    public double RowEffect(int row) => _rowEffects[row];

    /// <summary>Mean effect of all columns.</summary>
    public double MeanOfColumns { get; private set; }

    /// <summary>Mean effect of some columns. A row's fitted mean over them is its row effect plus this.</summary>
    public double ColumnMean(ReadOnlySpan<int> columns)
    {
        double sum = 0;
        foreach (int column in columns)
        {
            sum += _columnEffects[column];
        }

        return sum / columns.Length;
    }

    private void Solve()
    {
        (double[] shorter, double[] longer) = Cells.RowsAreShort ? (_rowEffects, _columnEffects) : (_columnEffects, _rowEffects);
        SumInto(longer, ofLong: true, new double[Cells.Short]);
        for (int line = 0; line < longer.Length; line++)
        {
            longer[line] /= Cells.LongCount[line];
        }

        SumInto(shorter, ofLong: false, longer);
        Reduced.Solve(shorter);
        double total = shorter.Sum();
        for (int line = 0; line < longer.Length; line++)
        {
            longer[line] -= Cells.Sum(line, shorter, total) / Cells.LongCount[line];
        }

        MoveLevel();
    }

    /// <summary>Sums of the values less the other side's means, along the longer or the shorter lines.</summary>
    private void SumInto(double[] sums, bool ofLong, double[] less)
    {
        bool byRow = ofLong != Cells.RowsAreShort;
        for (int row = 0, at = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++, at++)
            {
                double value = _values[at];
                sums[byRow ? row : column] += double.IsNaN(value) ? 0 : value - less[byRow ? column : row];
            }
        }
    }

    /// <summary>The level of the table belongs to the columns.</summary>
    private void MoveLevel()
    {
        double mean = _rowEffects.Average();
        for (int row = 0; row < Rows; row++)
        {
            _rowEffects[row] -= mean;
        }

        for (int column = 0; column < Columns; column++)
        {
            _columnEffects[column] += mean;
        }

        MeanOfColumns = _columnEffects.Average();
    }

    private void SumUp()
    {
        double rss = 0;
        double largest = 0;
        for (int row = 0, at = 0; row < Rows; row++)
        {
            double effect = _rowEffects[row];
            for (int column = 0; column < Columns; column++, at++)
            {
                double value = _values[at];
                if (!double.IsNaN(value))
                {
                    double residual = value - effect - _columnEffects[column];
                    rss += residual * residual;
                    largest = Math.Max(largest, Math.Abs(value));
                }
            }
        }

        Rss = RoundingNoise.Cleared(rss, Present, largest);
    }
}

/// <summary>
/// Tells a sum of squares that is truly something from one that only rounding left behind: n values of size up to M are known to about
/// 1e-15 M each (IEEE 754 binary64), so that residuals below 1e-12 M mean 0. Worked example: 1e-28 over 30 values of 60: 0.
/// </summary>
public static class RoundingNoise
{
    private const double Relative = 1e-12;

    /// <summary>The sum of squares, or 0 if rounding alone explains it.</summary>
    /// <param name="sumOfSquares">0 or more.</param>
    /// <param name="count">How many residuals it is over.</param>
    /// <param name="largest">Largest size among the values, 0 or more.</param>
    public static double Cleared(double sumOfSquares, int count, double largest)
    {
        double noise = Relative * Math.Max(1, largest);
        return sumOfSquares <= count * noise * noise ? 0 : sumOfSquares;
    }
}
