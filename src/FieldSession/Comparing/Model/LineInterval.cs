using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// From a difference and its two parts of variance to intervals and p (docs/formulas.md, "Any line"): V = w·w s^2 + s_e^2 (w'Cw - kbar
/// w·w), degrees of freedom by Satterthwaite (<see cref="WelchSatterthwaite"/>).
/// </summary>
internal static class LineInterval
{
    /// <summary>A standard error below this is rounding: no display shows it, dB.</summary>
    private const double NoScatterDb = 1e-9;
    private const double NoReadingPart = 1e-9;

    /// <summary>The estimate of one line.</summary>
    /// <param name="differenceDb">The difference, dB.</param>
    /// <param name="square">w·w.</param>
    /// <param name="readingShare">w'Cw.</param>
    /// <param name="scatter">The scatter.</param>
    /// <param name="marginDb">Margin of equivalence, dB.</param>
    /// <param name="limits">The limits of intervals.</param>
    public static Estimate Estimate(
        double differenceDb,
        double square,
        double readingShare,
        Scatter scatter,
        double marginDb,
        StudentLimits limits
    )
    {
        double bracket = readingShare - scatter.Kbar * square;
        bool readingPartUnknown = scatter.ReadingVarianceUsed is null && Math.Abs(bracket) > NoReadingPart;
        if (scatter.RunVarianceUsed is not double run || readingPartUnknown)
        {
            return new Estimate(differenceDb);
        }

        double runPart = square * run;
        double readingPart = (scatter.ReadingVarianceUsed ?? 0) * bracket;
        double standardError = Math.Sqrt(Math.Max(0, runPart + readingPart));
        return Of(differenceDb, standardError, Df(runPart, readingPart, scatter), marginDb, limits);
    }

    /// <summary>
    /// Intervals and p from a difference, its standard error and its degrees of freedom; a standard error of 0 gives no interval.
    /// </summary>
    public static Estimate Of(double differenceDb, double standardErrorDb, double df, double marginDb, StudentLimits limits)
    {
        if (standardErrorDb < NoScatterDb)
        {
            return new Estimate(differenceDb, 0);
        }

        (double t95, double t90) = limits.Of(df);
        (t95, t90) = (t95 * standardErrorDb, t90 * standardErrorDb);
        return new Estimate(
            differenceDb,
            standardErrorDb,
            df,
            differenceDb - t95,
            differenceDb + t95,
            StudentT.TwoSidedP(differenceDb / standardErrorDb, df),
            differenceDb - t90,
            differenceDb + t90,
            Tost.P(differenceDb, standardErrorDb, df, marginDb)
        )
        {
            MarginDb = marginDb,
        };
    }

    private static double Df(double runPart, double readingPart, Scatter scatter) =>
        scatter.NuE > 0 ? WelchSatterthwaite.Df([runPart, readingPart], [scatter.NuUsed, scatter.NuE]) : scatter.NuUsed;
}
