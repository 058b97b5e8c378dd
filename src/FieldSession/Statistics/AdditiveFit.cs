namespace FieldSession.Statistics;

/// <summary>
/// Least-squares fit y = row effect + column effect to a table with gaps. The column effects are eliminated, so that only a system as large
/// as the rows is solved: (diag(n_r) - N diag(1/n_s) N') a = sums of the values about their column mean, N the table of present cells
/// (the intrablock equations of an incomplete block design: F. Yates, J. Agric. Sci. 26, 1936). Cost: linear in the columns.
/// Worked example: rows (1, 2, -) and (3, -, 5): fitted gaps 4 and 3.
/// </summary>
public sealed class AdditiveFit
{
    private readonly double[] _values;
    private readonly double[] _rowEffects;
    private readonly double[] _columnEffects;
    private readonly double[] _counts;
    private readonly double[] _inverse;

    private AdditiveFit(int rows, int columns, double[] values)
    {
        Rows = rows;
        Columns = columns;
        _values = values;
        _counts = new double[columns];
        _columnEffects = new double[columns];
        _rowEffects = new double[rows];
        _inverse = new double[rows * rows];
    }

    /// <summary>Rows of the table.</summary>
    public int Rows { get; }

    /// <summary>Columns of the table.</summary>
    public int Columns { get; }

    /// <summary>Cells with a value.</summary>
    public int Present { get; private set; }

    /// <summary>Sum of squared residuals; sums that are rounding errors only count as 0.</summary>
    public double Rss { get; private set; }

    /// <summary>Degrees of freedom of <see cref="Rss"/>.</summary>
    public int Df => Present - (Rows + Columns - 1);

    /// <summary>Fits the table. Every column has a value, and rows and columns hang together through the cells present.</summary>
    /// <param name="rows">1 or more.</param>
    /// <param name="columns">1 or more.</param>
    /// <param name="values">The cells row by row, NaN for a gap; best centred near 0.</param>
    /// <exception cref="ArgumentException">The table falls apart into pieces that no row or column connects.</exception>
    public static AdditiveFit Of(int rows, int columns, double[] values)
    {
        AdditiveFit fit = new(rows, columns, values);
        fit.CountCells();
        fit.Reduce();
        PositiveDefinite.Invert(fit._inverse, rows);
        fit.SolveRows();
        fit.SolveColumns();
        return fit;
    }

    /// <summary>The fitted value of any cell, gaps included.</summary>
    public double Fitted(int row, int column) => _rowEffects[row] + _columnEffects[column];

    /// <summary>Whether a cell has a value.</summary>
    public bool Has(int row, int column) => !double.IsNaN(_values[row * Columns + column]);

    /// <summary>Value minus fitted value; NaN for a gap.</summary>
    public double Residual(int row, int column) => _values[row * Columns + column] - Fitted(row, column);

    /// <summary>The effect of a row; over all rows they add up to 0.</summary>
    public double RowEffect(int row) => _rowEffects[row];

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

    /// <summary>
    /// The part of the columns that belongs to a sum of weighted row means: for every row the mean over these columns of "present / cells in
    /// the column", and the mean's own variance. Serves <see cref="Variance"/>.
    /// </summary>
    public ColumnShare Share(ReadOnlySpan<int> columns)
    {
        double[] share = new double[Rows];
        double own = 0;
        double weight = 1.0 / columns.Length;
        foreach (int column in columns)
        {
            double part = weight / _counts[column];
            own += weight * part;
            for (int row = 0, at = column; row < Rows; row++, at += Columns)
            {
                share[row] += double.IsNaN(_values[at]) ? 0 : part;
            }
        }

        return new ColumnShare(share, own);
    }

    /// <summary>
    /// Variance of sum over rows of weight times fitted row mean, in units of the variance of one value.
    /// With c the sum of the weights and h the share: (w - c h)' A^- (w - c h) + c^2 times the share's own variance.
    /// </summary>
    /// <param name="weights">One weight per row.</param>
    /// <param name="share">The columns the row means are taken over.</param>
    public double Variance(ReadOnlySpan<double> weights, ColumnShare share)
    {
        double sum = 0;
        foreach (double weight in weights)
        {
            sum += weight;
        }

        double form = 0;
        for (int i = 0; i < Rows; i++)
        {
            double left = weights[i] - sum * share.OfRow[i];
            double inner = 0;
            for (int j = 0; left != 0 && j < Rows; j++)
            {
                inner += _inverse[i * Rows + j] * (weights[j] - sum * share.OfRow[j]);
            }

            form += left * inner;
        }

        return form + sum * sum * share.OwnVariance;
    }

    /// <summary>Variance of one fitted cell in units of the variance of one value: the leverage of the cell if it has a value.</summary>
    public double Leverage(int row, ColumnShare columnAlone)
    {
        double[] share = columnAlone.OfRow;
        double cross = 0;
        double form = 0;
        for (int i = 0; i < Rows; i++)
        {
            cross += _inverse[row * Rows + i] * share[i];
            for (int j = 0; share[i] != 0 && j < Rows; j++)
            {
                form += share[i] * _inverse[i * Rows + j] * share[j];
            }
        }

        return _inverse[row * Rows + row] - 2 * cross + form + columnAlone.OwnVariance;
    }

    private void CountCells()
    {
        for (int row = 0, at = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++, at++)
            {
                if (!double.IsNaN(_values[at]))
                {
                    _counts[column]++;
                    _columnEffects[column] += _values[at];
                    Present++;
                }
            }
        }

        for (int column = 0; column < Columns; column++)
        {
            _columnEffects[column] /= _counts[column];
        }
    }

    /// <summary>Fills the reduced matrix and its right side. Complete columns differ in nothing and are taken together.</summary>
    private void Reduce()
    {
        int complete = 0;
        for (int column = 0; column < Columns; column++)
        {
            complete += _counts[column] == Rows ? 1 : 0;
            if (_counts[column] < Rows)
            {
                AddIncomplete(column);
            }
        }

        double fill = 1.0 / Rows;
        for (int i = 0; i < Rows; i++)
        {
            for (int j = 0; j < Rows; j++)
            {
                // the last term pins the free constant of the row effects: their sum becomes 0
                _inverse[i * Rows + j] += (i == j ? complete : 0) - complete * fill + fill;
            }
        }
    }

    private void AddIncomplete(int column)
    {
        double share = 1 / _counts[column];
        for (int i = 0; i < Rows; i++)
        {
            if (!Has(i, column))
            {
                continue;
            }

            _inverse[i * Rows + i]++;
            for (int j = 0; j < Rows; j++)
            {
                _inverse[i * Rows + j] -= Has(j, column) ? share : 0;
            }
        }
    }

    private void SolveRows()
    {
        double[] right = new double[Rows];
        for (int row = 0, at = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++, at++)
            {
                right[row] += double.IsNaN(_values[at]) ? 0 : _values[at] - _columnEffects[column];
            }
        }

        for (int i = 0; i < Rows; i++)
        {
            for (int j = 0; j < Rows; j++)
            {
                _rowEffects[i] += _inverse[i * Rows + j] * right[j];
            }
        }
    }

    private void SolveColumns()
    {
        for (int row = 0, at = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++, at++)
            {
                _columnEffects[column] -= double.IsNaN(_values[at]) ? 0 : _rowEffects[row] / _counts[column];
            }
        }

        double rss = 0;
        double largest = 0;
        for (int row = 0, at = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++, at++)
            {
                double residual = double.IsNaN(_values[at]) ? 0 : _values[at] - Fitted(row, column);
                rss += residual * residual;
                largest = double.IsNaN(_values[at]) ? largest : Math.Max(largest, Math.Abs(_values[at]));
            }
        }

        Rss = RoundingNoise.Cleared(rss, Present, largest);
    }
}

/// <summary>What a choice of columns contributes to row means: see <see cref="AdditiveFit.Share"/>.</summary>
/// <param name="OfRow">One share per row; they add up to 1.</param>
/// <param name="OwnVariance">Variance of the column part itself, in units of the variance of one value.</param>
public readonly record struct ColumnShare(double[] OfRow, double OwnVariance);
