namespace FieldSession.Statistics;

/// <summary>
/// Inverse of a small symmetric positive definite matrix by Cholesky factors (A = L L'; any textbook of numerical linear algebra, e.g.
/// Golub and Van Loan, Matrix Computations, section 4.2). Worked example: the inverse of (2 1; 1 2) is (2 -1; -1 2) / 3.
/// </summary>
public static class PositiveDefinite
{
    /// <summary>Replaces the matrix (row by row, n x n) by its inverse.</summary>
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    public static void Invert(Span<double> matrix, int n)
    {
        Factor(matrix, n);
        InvertFactor(matrix, n);
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = 0;
                for (int k = i; k < n; k++)
                {
                    sum += matrix[k * n + i] * matrix[k * n + j];
                }

                matrix[j * n + i] = sum;
            }

            for (int j = 0; j < i; j++)
            {
                matrix[i * n + j] = matrix[j * n + i];
            }
        }
    }

    private static void Factor(Span<double> matrix, int n)
    {
        for (int j = 0; j < n; j++)
        {
            for (int i = j; i < n; i++)
            {
                double sum = matrix[i * n + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= matrix[i * n + k] * matrix[j * n + k];
                }

                matrix[i * n + j] = i > j ? sum / matrix[j * n + j]
                    : sum > 0 ? Math.Sqrt(sum)
                    : throw new ArgumentException("the matrix is not positive definite", nameof(matrix));
            }
        }
    }

    private static void InvertFactor(Span<double> matrix, int n)
    {
        for (int j = 0; j < n; j++)
        {
            matrix[j * n + j] = 1 / matrix[j * n + j];
            for (int i = j + 1; i < n; i++)
            {
                double sum = 0;
                for (int k = j; k < i; k++)
                {
                    sum -= matrix[i * n + k] * matrix[k * n + j];
                }

                matrix[i * n + j] = sum / matrix[i * n + i];
            }
        }
    }
}
