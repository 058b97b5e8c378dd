using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace FieldSession.Tests.Statistics;

/// <summary>
/// Ordinary least squares by Householder QR (G. H. Golub, Numerische Mathematik 7, 1965), values centred on their mean first.
/// Worked example: the line through (0, 1), (1, 3), (2, 5) is 1 + 2 x.
/// </summary>
public sealed class LeastSquares
{
    private readonly Matrix<double> _inverseR;

    private LeastSquares(double[] coefficients, double rss, int df, Matrix<double> inverseR)
    {
        Coefficients = coefficients;
        Rss = rss;
        Df = df;
        _inverseR = inverseR;
    }

    /// <summary>One coefficient per column.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Sum of squared residuals.</summary>
    public double Rss { get; }

    /// <summary>Values minus columns.</summary>
    public int Df { get; }

    /// <summary>Residual standard deviation; null without degrees of freedom.</summary>
    public double? ResidualSd => Df > 0 ? Math.Sqrt(Rss / Df) : null;

    /// <summary>Standard error of a coefficient; null without degrees of freedom.</summary>
    public double? StandardError(int column) => ResidualSd * _inverseR.Row(column).L2Norm();

    /// <summary>Fits y to the columns.</summary>
    /// <param name="columns">Columns of the design, none a combination of the others, one of them (or a combination) constant.</param>
    /// <param name="y">As many values as a column has.</param>
    /// <exception cref="ArgumentException">A column is a combination of the others, or there are fewer values than columns.</exception>
    public static LeastSquares Fit(IReadOnlyList<double[]> columns, double[] y)
    {
        if (y.Length < columns.Count)
        {
            throw new ArgumentException("needs at least as many values as columns", nameof(columns));
        }

        Matrix<double> x = Matrix<double>.Build.DenseOfColumns(columns);
        Vector<double> values = Vector<double>.Build.DenseOfArray(y);
        QR<double> qr = x.QR(QRMethod.Thin);
        Vector<double> diagonal = qr.R.Diagonal().PointwiseAbs();
        if (diagonal.Minimum() <= 1e-11 * diagonal.Maximum())
        {
            throw new ArgumentException("a column is a combination of the others", nameof(columns));
        }

        Matrix<double> inverseR = qr.R.Inverse();
        Vector<double> constant = Vector<double>.Build.Dense(y.Length, y.Average());
        Vector<double> coefficients = inverseR * (qr.Q.TransposeThisAndMultiply(values - constant));
        Vector<double> constantPart = inverseR * qr.Q.TransposeThisAndMultiply(constant);
        double rss = (values - constant - x * coefficients).DotProduct(values - constant - x * coefficients);
        return new LeastSquares((coefficients + constantPart).ToArray(), rss, y.Length - columns.Count, inverseR);
    }
}
