using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>How well runs and readings repeat, and what a day is to show with them.</summary>
/// <param name="RunSdDb">Standard deviation of the runs themselves, dB, from 0.</param>
/// <param name="ReadingSdDb">Standard deviation of a reading about its run and segment, dB, from 0; not both 0.</param>
/// <param name="Segments">Segments of the class compared, from 1.</param>
/// <param name="DifferenceDb">The true difference that is to be shown, dB, above 0.</param>
/// <param name="MarginDb">The margin within which two codes are to be called equivalent, dB, above 0.</param>
/// <param name="Power">The chance wanted, between 0 and 1.</param>
/// <param name="Alpha">Chance of a false verdict word, between 0 and 1.</param>
public sealed record SizeTerms(
    double RunSdDb,
    double ReadingSdDb,
    int Segments,
    double DifferenceDb,
    double MarginDb,
    double Power = 0.8,
    double Alpha = 0.05
)
{
    /// <summary>Standard deviation of a run's mean: more segments lessen the readings' share only, more runs lessen all of it.</summary>
    public double RunMeanSdDb => Math.Sqrt(RunSdDb * RunSdDb + ReadingSdDb * ReadingSdDb / Segments);
}

/// <summary>
/// What a number of runs per code can do. The second figures hold where a straight drift over the day is taken out, from 6 runs on.
/// </summary>
/// <param name="Runs">Runs per code.</param>
/// <param name="SmallestDifferenceDb">The smallest true difference shown with the wanted chance, dB; null: none that can be
/// computed.</param>
/// <param name="Power">The chance to show the wanted difference.</param>
/// <param name="EquivalencePower">The chance to show equivalence when there is no difference.</param>
/// <param name="SmallestWithDriftDb">Smallest difference with the drift taken out, dB; null below 6 runs.</param>
/// <param name="PowerWithDrift">Chance with the drift taken out; null below 6 runs.</param>
public sealed record SizeRow(
    int Runs,
    double? SmallestDifferenceDb,
    double Power,
    double EquivalencePower,
    double? SmallestWithDriftDb,
    double? PowerWithDrift
);

/// <summary>
/// How many runs per code a wanted difference of two codes needs, and what a number of runs can show: standard error of a run mean times
/// sqrt(2/n), 2n - 2 degrees of freedom (one less with the drift column), power from the noncentral t distribution (docs/formulas.md).
/// The order has to balance drift (R 1 1 R).
/// </summary>
/// <param name="Terms">What was asked.</param>
/// <param name="RunsForDifference">Fewest runs per code that show the difference with the wanted chance; null: not within 200.</param>
/// <param name="RunsForDifferenceWithDrift">The same where a drift is taken out from 6 runs on.</param>
/// <param name="RunsForEquivalence">Fewest runs per code that show equivalence when there is no difference; null: not within 200.</param>
/// <param name="Rows">What numbers of runs can do, from 2 per code.</param>
public sealed record DaySize(
    SizeTerms Terms,
    int? RunsForDifference,
    int? RunsForDifferenceWithDrift,
    int? RunsForEquivalence,
    IReadOnlyList<SizeRow> Rows
)
{
    private const int FewestRuns = 2;
    private const int RowsAtLeast = 6;
    private const int RowsAtMost = 20;

    // with two codes the drift column enters from 6 runs on, 3 per code
    private const int FewestRunsWithDrift = 3;

    /// <summary>Works it out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A term is outside its range.</exception>
    public static DaySize Of(SizeTerms terms)
    {
        Check(terms);
        int? forDifference = TwoSampleSize.PerSideForDifference(terms.RunMeanSdDb, terms.DifferenceDb, terms.Power, terms.Alpha);
        int? withDrift = Fewest(terms);
        int? forEquivalence = TwoSampleSize.PerSideForEquivalence(terms.RunMeanSdDb, terms.MarginDb, terms.Power, terms.Alpha);
        int last = Math.Clamp(Math.Max(forDifference ?? 0, Math.Max(withDrift ?? 0, forEquivalence ?? 0)), RowsAtLeast, RowsAtMost);
        return new DaySize(
            terms,
            forDifference,
            withDrift,
            forEquivalence,
            [.. Enumerable.Range(FewestRuns, last - FewestRuns + 1).Select(runs => Row(terms, runs))]
        );
    }

    /// <summary>What one number of runs per code can do.</summary>
    /// <param name="terms">What is asked.</param>
    /// <param name="runs">Runs per code, 2..200.</param>
    /// <exception cref="ArgumentOutOfRangeException">A term or the number of runs is outside its range.</exception>
    public static SizeRow Row(SizeTerms terms, int runs)
    {
        Check(terms);
        ArgumentOutOfRangeException.ThrowIfLessThan(runs, FewestRuns);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(runs, TwoSampleSize.MostPerSide);
        double sd = terms.RunMeanSdDb;
        bool hasDrift = runs >= FewestRunsWithDrift;
        return new SizeRow(
            runs,
            TwoSampleSize.SmallestDifference(sd, runs, terms.Power, terms.Alpha),
            TwoSampleSize.Power(sd, runs, terms.DifferenceDb, terms.Alpha),
            TwoSampleSize.EquivalencePower(sd, runs, terms.MarginDb, terms.Alpha),
            hasDrift ? NoncentralT.NoncentralityForPower(terms.Power, DfWithDrift(runs), terms.Alpha) * StandardErrorDb(terms, runs) : null,
            hasDrift ? PowerWithDrift(terms, runs) : null
        );
    }

    private static int? Fewest(SizeTerms terms)
    {
        for (int runs = FewestRuns; runs <= TwoSampleSize.MostPerSide; runs++)
        {
            double power =
                runs < FewestRunsWithDrift
                    ? TwoSampleSize.Power(terms.RunMeanSdDb, runs, terms.DifferenceDb, terms.Alpha)
                    : PowerWithDrift(terms, runs);
            if (power >= terms.Power)
            {
                return runs;
            }
        }

        return null;
    }

    private static double PowerWithDrift(SizeTerms terms, int runs) =>
        NoncentralT.TwoSidedPower(
            Math.Min(NoncentralT.LargestNoncentrality, terms.DifferenceDb / StandardErrorDb(terms, runs)),
            DfWithDrift(runs),
            terms.Alpha
        );

    private static int DfWithDrift(int runs) => 2 * runs - 3;

    private static double StandardErrorDb(SizeTerms terms, int runs) => terms.RunMeanSdDb * Math.Sqrt(2.0 / runs);

    private static void Check(SizeTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        bool good =
            terms is { RunSdDb: >= 0, ReadingSdDb: >= 0, Segments: >= 1, DifferenceDb: > 0, MarginDb: > 0 }
            && terms.RunMeanSdDb > 0
            && double.IsFinite(terms.RunMeanSdDb + terms.DifferenceDb + terms.MarginDb)
            && terms.Power is > 0 and < 1
            && terms.Alpha is > 0 and < 1;
        if (!good)
        {
            throw new ArgumentOutOfRangeException(nameof(terms), "a term is outside its range");
        }
    }
}
