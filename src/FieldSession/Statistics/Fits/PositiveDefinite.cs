using System.Numerics;
using System.Runtime.InteropServices;

namespace FieldSession.Statistics;

/// <summary>
/// Symmetric positive definite matrices by Cholesky factors (A = L L'; any textbook of numerical linear algebra, e.g. Golub and Van Loan,
/// Matrix Computations, section 4.2). Matrices are kept row by row; all loops run along rows, because those lie together in memory.
/// Worked example: (2 1; 1 2) times (1, 0) is (2, 1), and its inverse is (2 -1; -1 2) / 3.
/// </summary>
public static class PositiveDefinite
{
    /// <summary>Replaces the lower triangle of a matrix (n x n) by its factor L; the upper triangle is neither read nor written.</summary>
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    public static void Factor(Span<double> matrix, int n)
    {
        for (int i = 0; i < n; i++)
        {
            Span<double> row = matrix.Slice(i * n, i + 1);
            for (int j = 0; j < i; j++)
            {
                row[j] = (row[j] - Dot(row[..j], matrix.Slice(j * n, j))) / matrix[j * n + j];
            }

            double left = row[i] - Dot(row[..i], row[..i]);
            row[i] = left > 0 ? Math.Sqrt(left) : throw new ArgumentException("the matrix is not positive definite", nameof(matrix));
        }
    }

    /// <summary>Replaces a right side by the solution of A x = right.</summary>
    /// <param name="factor">From <see cref="Factor"/>.</param>
    /// <param name="right">As many numbers as the matrix has rows.</param>
    public static void Solve(ReadOnlySpan<double> factor, Span<double> right)
    {
        int n = right.Length;
        for (int i = 0; i < n; i++)
        {
            right[i] = (right[i] - Dot(factor.Slice(i * n, i), right[..i])) / factor[i * n + i];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            right[i] /= factor[i * n + i];
            AddTimes(right[..i], -right[i], factor.Slice(i * n, i));
        }
    }

    /// <summary>The inverse of A, both triangles filled.</summary>
    /// <param name="factor">From <see cref="Factor"/>; it is used up.</param>
    /// <param name="n">Rows.</param>
    public static double[] Inverse(Span<double> factor, int n)
    {
        double[] inverse = new double[n * n];
        double[] row = new double[n];
        for (int k = 0; k < n; k++)
        {
            InvertRow(factor, n, k, row);
            for (int i = 0; i <= k; i++)
            {
                AddTimes(inverse.AsSpan(i * n, i + 1), row[i], row.AsSpan(0, i + 1));
            }
        }

        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < i; j++)
            {
                inverse[j * n + i] = inverse[i * n + j];
            }
        }

        return inverse;
    }

    /// <summary>The inner product of two rows of the same length.</summary>
    internal static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        ReadOnlySpan<Vector<double>> wideX = MemoryMarshal.Cast<double, Vector<double>>(x);
        ReadOnlySpan<Vector<double>> wideY = MemoryMarshal.Cast<double, Vector<double>>(y);
        Vector<double> sums = Vector<double>.Zero;
        for (int i = 0; i < wideX.Length; i++)
        {
            sums += wideX[i] * wideY[i];
        }

        double sum = Vector.Sum(sums);
        for (int i = wideX.Length * Vector<double>.Count; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }

    /// <summary>Adds a multiple of one row to another of the same length.</summary>
    internal static void AddTimes(Span<double> to, double factor, ReadOnlySpan<double> row)
    {
        Span<Vector<double>> wideTo = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> wideRow = MemoryMarshal.Cast<double, Vector<double>>(row);
        Vector<double> wideFactor = new(factor);
        for (int i = 0; i < wideTo.Length; i++)
        {
            wideTo[i] += wideFactor * wideRow[i];
        }

        for (int i = wideTo.Length * Vector<double>.Count; i < to.Length; i++)
        {
            to[i] += factor * row[i];
        }
    }

    /// <summary>Row k of the inverse factor, which takes the place of the factor's own row and is copied out.</summary>
    private static void InvertRow(Span<double> factor, int n, int k, Span<double> copy)
    {
        Span<double> own = factor.Slice(k * n, k + 1);
        copy.Clear();
        for (int j = 0; j < k; j++)
        {
            AddTimes(copy[..(j + 1)], own[j], factor.Slice(j * n, j + 1));
        }

        double diagonal = 1 / own[k];
        for (int j = 0; j < k; j++)
        {
            copy[j] *= -diagonal;
        }

        copy[k] = diagonal;
        copy[..(k + 1)].CopyTo(own);
    }
}
