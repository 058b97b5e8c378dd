namespace FieldSession.Statistics;

/// <summary>
/// A least-squares design built column by column: each new column is made orthogonal to those before it by two rounds of Gram-Schmidt,
/// which suffices (W. Kahan and B. N. Parlett in B. N. Parlett, The Symmetric Eigenvalue Problem, 1980, section 6.9), and refused if it
/// brings nothing new. For designs of a few dozen rows.
/// Worked example: columns (1,1,0,0), (0,0,1,1), contrast (1,-1): weights (1/2, 1/2, -1/2, -1/2).
/// </summary>
public sealed class OrthonormalColumns
{
    private const double NothingNew = 1e-9;
    private readonly List<double[]> _basis = [];
    private readonly List<double[]> _triangle = [];

    /// <summary>A design without columns over this many rows.</summary>
    public OrthonormalColumns(int rows) => Rows = rows;

    /// <summary>How many values the design describes.</summary>
    public int Rows { get; }

    /// <summary>How many columns were taken.</summary>
    public int Count => _basis.Count;

    /// <summary>The orthonormal columns; their span is the design's.</summary>
    public IReadOnlyList<double[]> Basis => _basis;

    /// <summary>Takes a column in if it is no combination of those before it.</summary>
    /// <returns>True if it was taken.</returns>
    public bool TryAdd(ReadOnlySpan<double> column)
    {
        double[] rest = column.ToArray();
        double[] parts = new double[Count + 1];
        double norm = Math.Sqrt(Dot(rest, rest));
        for (int round = 0; round < 2; round++)
        {
            for (int j = 0; j < Count; j++)
            {
                double part = Dot(_basis[j], rest);
                parts[j] += part;
                Subtract(rest, part, _basis[j]);
            }
        }

        double left = Math.Sqrt(Dot(rest, rest));
        if (left <= NothingNew * norm)
        {
            return false;
        }

        for (int i = 0; i < rest.Length; i++)
        {
            rest[i] /= left;
        }

        parts[Count] = left;
        _basis.Add(rest);
        _triangle.Add(parts);
        return true;
    }

    /// <summary>
    /// The weights w with: w · y is the least-squares estimate of the contrast, that is w = X (X'X)^-1 c. Its variance is w · w times that
    /// of a value.
    /// </summary>
    /// <param name="contrast">One number per column taken; missing ones at the end are 0.</param>
    public double[] Weights(ReadOnlySpan<double> contrast)
    {
        double[] weights = new double[Rows];
        double[] solved = new double[Count];
        for (int j = 0; j < Count; j++)
        {
            double right = j < contrast.Length ? contrast[j] : 0;
            for (int i = 0; i < j; i++)
            {
                right -= _triangle[j][i] * solved[i];
            }

            solved[j] = right / _triangle[j][j];
            Subtract(weights, -solved[j], _basis[j]);
        }

        return weights;
    }

    /// <summary>Sum of squared residuals of values about the design.</summary>
    public double Rss(ReadOnlySpan<double> y)
    {
        double[] rest = y.ToArray();
        for (int round = 0; round < 2; round++)
        {
            foreach (double[] column in _basis)
            {
                Subtract(rest, Dot(column, rest), column);
            }
        }

        return Dot(rest, rest);
    }

    private static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }

    private static void Subtract(double[] from, double factor, double[] column)
    {
        for (int i = 0; i < from.Length; i++)
        {
            from[i] -= factor * column[i];
        }
    }
}
