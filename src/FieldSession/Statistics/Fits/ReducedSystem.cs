namespace FieldSession.Statistics;

/// <summary>
/// The system that is left of a fit of rows and columns once the longer side is eliminated: diag(n) - N diag(1/m) N', n and m the values in
/// the lines of the shorter and the longer side, N which cells have one (intrablock equations: F. Yates, J. Agric. Sci. 26, 1936). Its free
/// constant is pinned by adding 1/size everywhere, so that the effects of the shorter side add up to 0. A complete table needs no matrix.
/// </summary>
internal sealed class ReducedSystem
{
    private readonly Incidence _cells;
    private readonly double[]? _factor;

    private ReducedSystem(Incidence cells)
    {
        _cells = cells;
        if (!cells.IsComplete)
        {
            _factor = Matrix();
            PositiveDefinite.Factor(_factor, cells.Short);
        }
    }

    /// <summary>Sets it up.</summary>
    /// <exception cref="ArgumentException">The table falls apart into pieces that no row or column connects.</exception>
    public static ReducedSystem Of(Incidence cells) => new(cells);

    /// <summary>Replaces a right side whose numbers add up to 0 by the solution.</summary>
    public void Solve(Span<double> right)
    {
        if (_factor is not null)
        {
            PositiveDefinite.Solve(_factor, right);
            return;
        }

        for (int i = 0; i < right.Length; i++)
        {
            right[i] /= _cells.Long;
        }
    }

    /// <summary>
    /// The inverse of the pinned system; null: the table is complete, and the inverse is the closed form of <see cref="CompleteEntry"/>.
    /// </summary>
    public double[]? Inverse() => _factor is null ? null : PositiveDefinite.Inverse((double[])_factor.Clone(), _cells.Short);

    /// <summary>An entry of the inverse for a complete table: 1/long on the diagonal, (1 - 1/long) / short everywhere.</summary>
    public static double CompleteEntry(Incidence cells, bool isDiagonal) =>
        (isDiagonal ? 1.0 / cells.Long : 0) + (1 - 1.0 / cells.Long) / cells.Short;

    /// <summary>The lower triangle of the system.</summary>
    private double[] Matrix()
    {
        int n = _cells.Short;
        double[] matrix = new double[n * n];
        double[] lessOfRow = new double[n];
        double everywhere = 0;
        for (int line = 0; line < _cells.Long; line++)
        {
            double share = 1.0 / _cells.LongCount[line];
            ReadOnlySpan<int> few = _cells.Few(line);
            TakeOff(matrix, few, share);
            if (!_cells.FewHaveValue(line))
            {
                everywhere += share;
                foreach (int i in few)
                {
                    lessOfRow[i] += share;
                }
            }
        }

        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                matrix[i * n + j] += lessOfRow[i] + lessOfRow[j] - everywhere + 1.0 / n;
            }

            matrix[i * n + i] += _cells.ShortCount[i];
        }

        return matrix;
    }

    private void TakeOff(double[] matrix, ReadOnlySpan<int> few, double share)
    {
        for (int a = 0; a < few.Length; a++)
        {
            int row = few[a] * _cells.Short;
            for (int b = 0; b <= a; b++)
            {
                matrix[row + few[b]] -= share;
            }
        }
    }
}
