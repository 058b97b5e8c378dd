namespace FieldSession.Statistics;

/// <summary>
/// Variances of what an <see cref="AdditiveFit"/> gives, in units of the variance of one value. Any sum u'a + v'b over the effects of the
/// shorter side (a) and the longer side (b) has variance g' A^- g + sum of v^2 / n, with g = u - N diag(1/n) v: a line's own mean and the
/// effects of the shorter side are uncorrelated (F. Yates, J. Agric. Sci. 26, 1936). With A^- pinned, A^- 1 = 1.
/// Worked example: a complete table of 4 rows and 10 columns: a row's mean has variance 1/10, a cell's leverage is 1/4 + 1/10 - 1/40.
/// </summary>
public sealed class AdditiveErrors
{
    private readonly Incidence _cells;
    private readonly double[]? _inverse;
    private readonly double[] _ofLongLine;
    private readonly double[] _allColumns;

    private AdditiveErrors(AdditiveFit fit)
    {
        Fit = fit;
        _cells = fit.Cells;
        _inverse = fit.Reduced.Inverse();
        _ofLongLine = new double[_cells.Long];
        for (int line = 0; line < _ofLongLine.Length; line++)
        {
            _ofLongLine[line] = OfLongLine(line);
        }

        (_allColumns, OfAllColumns) = AllColumns();
    }

    /// <summary>The fit.</summary>
    public AdditiveFit Fit { get; }

    /// <summary><see cref="OfColumns"/> of all columns together.</summary>
    public double OfAllColumns { get; }

    /// <summary>Which cells have a value.</summary>
    internal Incidence Cells => _cells;

    /// <summary>Works them out.</summary>
    public static AdditiveErrors Of(AdditiveFit fit) => new(fit);

    /// <summary>A sum of weighted rows, ready to be taken over any columns.</summary>
    /// <param name="weights">One weight per row.</param>
    public RowContrast Contrast(ReadOnlySpan<double> weights) => RowContrast.Of(this, weights);

    /// <summary>
    /// The part of the variance of a row mean over some columns that the columns bring; serves <see cref="RowContrast"/>.
    /// </summary>
    public double OfColumns(ReadOnlySpan<int> columns)
    {
        if (columns.Length == 1)
        {
            return _cells.RowsAreShort ? _ofLongLine[columns[0]] : Entry(columns[0], columns[0]);
        }

        double weight = 1.0 / columns.Length;
        return _cells.RowsAreShort ? OfLongColumns(columns, weight) : OfShortColumns(columns, weight);
    }

    /// <summary>The variances of the fitted means of all rows over all columns, added up.</summary>
    public double OfAllRowMeans()
    {
        if (!_cells.RowsAreShort)
        {
            return _ofLongLine.Sum() - (double)_cells.Long / _cells.Short;
        }

        double trace = 0;
        for (int row = 0; row < _cells.Short; row++)
        {
            trace += Entry(row, row);
        }

        return trace - 2 + _cells.Short * OfAllColumns;
    }

    /// <summary>Variance of a fitted cell: its leverage if it has a value.</summary>
    public double Leverage(int row, int column)
    {
        (int shorter, int longer) = _cells.RowsAreShort ? (row, column) : (column, row);
        double sum = 0;
        foreach (int place in _cells.Few(longer))
        {
            sum += Entry(shorter, place);
        }

        double cross = (_cells.FewHaveValue(longer) ? sum : 1 - sum) / _cells.LongCount[longer];
        return Entry(shorter, shorter) - 2 * cross + _ofLongLine[longer];
    }

    /// <summary>The covariance of a solved contrast with the mean over all columns.</summary>
    internal double WithAllColumns(ReadOnlySpan<double> solved) => PositiveDefinite.Dot(_allColumns, solved);

    /// <summary>The inverse of the reduced system times a vector.</summary>
    internal double[] Times(ReadOnlySpan<double> x)
    {
        double[] product = new double[x.Length];
        if (_inverse is null)
        {
            double sum = 0;
            foreach (double one in x)
            {
                sum += one;
            }

            double level = sum * ReducedSystem.CompleteEntry(_cells, isDiagonal: false);
            for (int i = 0; i < product.Length; i++)
            {
                product[i] = x[i] / _cells.Long + level;
            }

            return product;
        }

        for (int i = 0; i < product.Length; i++)
        {
            product[i] = PositiveDefinite.Dot(_inverse.AsSpan(i * x.Length, x.Length), x);
        }

        return product;
    }

    private double Entry(int i, int j) => _inverse is null ? ReducedSystem.CompleteEntry(_cells, i == j) : _inverse[i * _cells.Short + j];

    /// <summary>h' A^- h + 1/n for a line of the longer side, h = its cells with a value / n.</summary>
    private double OfLongLine(int line)
    {
        ReadOnlySpan<int> few = _cells.Few(line);
        double form = 0;
        foreach (int i in few)
        {
            foreach (int j in few)
            {
                form += Entry(i, j);
            }
        }

        double n = _cells.LongCount[line];
        double whole = _cells.FewHaveValue(line) ? form : _cells.Short - 2 * few.Length + form;
        return whole / (n * n) + 1 / n;
    }

    /// <summary>
    /// All columns with the same weight, as seen from the shorter side, and their part of the variance; where the columns are the shorter
    /// side, A^- 1 = 1 gives it.
    /// </summary>
    private (double[] Shares, double Own) AllColumns()
    {
        double[] equal = new double[_cells.RowsAreShort ? _cells.Long : _cells.Short];
        Array.Fill(equal, 1.0 / equal.Length);
        if (!_cells.RowsAreShort)
        {
            return (equal, 1.0 / equal.Length);
        }

        double own = 0;
        for (int line = 0; line < equal.Length; line++)
        {
            double share = equal[line] / _cells.LongCount[line];
            own += equal[line] * share;
            equal[line] = share;
        }

        double[] h = _cells.Across(equal);
        return (h, PositiveDefinite.Dot(h, Times(h)) + own);
    }

    private double OfLongColumns(ReadOnlySpan<int> columns, double weight)
    {
        double[] shares = new double[_cells.Long];
        double own = 0;
        foreach (int column in columns)
        {
            shares[column] = weight / _cells.LongCount[column];
            own += weight * shares[column];
        }

        double[] h = _cells.Across(shares);
        return PositiveDefinite.Dot(h, Times(h)) + own;
    }

    private double OfShortColumns(ReadOnlySpan<int> columns, double weight)
    {
        double form = 0;
        foreach (int i in columns)
        {
            foreach (int j in columns)
            {
                form += Entry(i, j);
            }
        }

        return weight * weight * form;
    }
}
