namespace FieldSession.Statistics;

/// <summary>
/// A sum of weighted rows of an additive fit, ready to be taken over any columns: what it is, and its variance in units of the variance of
/// one value (<see cref="AdditiveErrors"/>). Made once per contrast, so that a line over one column costs next to nothing. Worked example:
/// weights (1/2, 1/2) over all columns of a complete table of 2 rows and 3 columns: variance 1/6.
/// </summary>
public sealed class RowContrast
{
    private readonly AdditiveErrors _errors;
    private readonly double[] _solved;
    private readonly double _sum;
    private readonly double _effect;
    private readonly double _ofRows;

    private RowContrast(AdditiveErrors errors, ReadOnlySpan<double> weights)
    {
        _errors = errors;
        for (int row = 0; row < weights.Length; row++)
        {
            _sum += weights[row];
            _effect += weights[row] * errors.Fit.RowEffect(row);
            SumOfSquares += weights[row] * weights[row];
        }

        (_ofRows, _solved) = errors.Cells.RowsAreShort ? OfShortRows(errors, weights) : OfLongRows(errors, weights);
    }

    /// <summary>Sum of the squared weights.</summary>
    public double SumOfSquares { get; }

    /// <summary>Makes it.</summary>
    /// <param name="errors">Of the fit.</param>
    /// <param name="weights">One weight per row.</param>
    public static RowContrast Of(AdditiveErrors errors, ReadOnlySpan<double> weights) => new(errors, weights);

    /// <summary>The sum of the weighted fitted row means over some columns.</summary>
    public double Value(ReadOnlySpan<int> columns) => _effect + _sum * _errors.Fit.ColumnMean(columns);

    /// <summary>The same over all columns, at no cost that grows with them.</summary>
    public double ValueOverAll => _effect + _sum * _errors.Fit.MeanOfColumns;

    /// <summary>Its variance.</summary>
    public double Variance(ReadOnlySpan<int> columns)
    {
        double with = 0;
        foreach (int column in columns)
        {
            with += WithColumns[column];
        }

        return Variance(with / columns.Length, _errors.OfColumns(columns));
    }

    /// <summary>The same over all columns, at no cost that grows with them.</summary>
    public double VarianceOverAll() => Variance(_errors.WithAllColumns(_solved), _errors.OfAllColumns);

    /// <summary>For every column the covariance with its mean.</summary>
    private double[] WithColumns => field ??= _errors.Cells.RowsAreShort ? MeansOf(_solved) : _solved;

    private double Variance(double withColumns, double ofColumns) => _ofRows - 2 * _sum * withColumns + _sum * _sum * ofColumns;

    private double[] MeansOf(double[] solved)
    {
        double total = solved.Sum();
        double[] means = new double[_errors.Cells.Long];
        for (int line = 0; line < means.Length; line++)
        {
            means[line] = _errors.Cells.Sum(line, solved, total) / _errors.Cells.LongCount[line];
        }

        return means;
    }

    private static (double OfRows, double[] Solved) OfShortRows(AdditiveErrors errors, ReadOnlySpan<double> weights)
    {
        double[] solved = errors.Times(weights);
        return (PositiveDefinite.Dot(weights, solved), solved);
    }

    private static (double OfRows, double[] Solved) OfLongRows(AdditiveErrors errors, ReadOnlySpan<double> weights)
    {
        double[] shares = new double[weights.Length];
        double own = 0;
        for (int row = 0; row < shares.Length; row++)
        {
            shares[row] = weights[row] / errors.Cells.LongCount[row];
            own += weights[row] * shares[row];
        }

        double[] across = errors.Cells.Across(shares);
        double[] solved = errors.Times(across);
        return (PositiveDefinite.Dot(across, solved) + own, solved);
    }
}
