using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The smallest true difference that such a day would have shown with 80 % chance, at the level that the word needs. It rests on the day's
/// own scatter and is no better known than that: its interval is that of the scatter, by chi-square (docs/formulas.md, "Could have shown").
/// </summary>
/// <param name="Db">The difference, dB.</param>
/// <param name="LowDb">Lower end of its 95 % interval, dB.</param>
/// <param name="HighDb">Upper end, dB.</param>
/// <param name="Df">Degrees of freedom of the scatter.</param>
public sealed record CouldShow(double Db, double LowDb, double HighDb, double Df)
{
    private const double Power = 0.80;
    private const double Outside = 0.025;

    /// <summary>What a difference with this error could show; null: without an error, or beyond what is computed.</summary>
    /// <param name="overall">The difference.</param>
    /// <param name="level">Two-sided, the level that its own p has to stay below.</param>
    internal static CouldShow? Of(Estimate overall, double level)
    {
        if (
            overall is not { StandardErrorDb: > 0 and double error, Df: double df, HasNoUsableInterval: false }
            || NoncentralT.NoncentralityForPower(Power, df, level) is not double noncentrality
        )
        {
            return null;
        }

        double db = noncentrality * error;
        return new CouldShow(
            db,
            db * Math.Sqrt(df / ChiSquare.Quantile(1 - Outside, df)),
            db * Math.Sqrt(df / ChiSquare.Quantile(Outside, df)),
            df
        );
    }
}
