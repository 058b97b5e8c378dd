using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// What was agreed before the comparison is looked at: against which code, what margin matters, and what earlier days may lend.
/// </summary>
/// <param name="Reference">The code the others are compared with; null: the code of the first run.</param>
/// <param name="MarginDb">Differences within plus or minus this count as equivalent on steady segments and over all segments, dB, above
/// 0.</param>
/// <param name="ImpactMarginDb">The same on impact segments, dB, above 0.</param>
/// <param name="Archive">Repeatability of earlier days; null or empty: today's scatter alone.</param>
/// <param name="PlanComplete">False while planned runs are still open: numbers then, but no verdict words.</param>
/// <param name="Alpha">Chance of a false verdict word that is accepted, 0..1.</param>
public sealed record ComparisonTerms(
    string? Reference = null,
    double MarginDb = 1.0,
    double ImpactMarginDb = 2.0,
    IReadOnlyList<ArchiveLine>? Archive = null,
    bool PlanComplete = true,
    double Alpha = 0.05
)
{
    /// <summary>Names of the only segments that the main question is answered on; null: all that the main measure takes.</summary>
    public IReadOnlyList<string>? MainSegments { get; init; }

    /// <summary>What the plan's question is answered on; null: there is no plan, and no class is called explored.</summary>
    public MainMeasure? MainMeasure { get; init; }

    /// <summary>
    /// Whether the plan's question is not answered on a class (null: all segments together), which is then looked at beyond it.
    /// </summary>
    public bool IsExplored(MeasureClass? measureClass) =>
        MainMeasure is { } main && (MainSegments is not null || MainClassOf(main) != measureClass);

    /// <summary>The class that a main measure is answered on; null: all segments together.</summary>
    public static MeasureClass? MainClassOf(MainMeasure measure) =>
        measure switch
        {
            State.MainMeasure.Steady => MeasureClass.Steady,
            State.MainMeasure.Impact => MeasureClass.Impact,
            _ => null,
        };

    /// <summary>
    /// How often the order was lengthened after a comparison could be seen; null: there is no order, and one look takes all of
    /// <see cref="Alpha"/>.
    /// </summary>
    public Looks? Looks { get; init; }

    /// <summary>Whether the plan asks for every pair of codes, and not only for each candidate against the control.</summary>
    public bool AsksAllPairs { get; init; }

    /// <summary>The levels that words need now, of one comparison or of all that are asked at once.</summary>
    public WordLevels Levels => Looks?.Now ?? new WordLevels(Alpha, Alpha);

    /// <summary>The levels that words need if the order is lengthened by so many runs.</summary>
    public WordLevels LevelsAfter(int runs) => Looks?.After(runs) ?? Levels;

    /// <summary>The margin of a class, dB; all segments together use the steady one.</summary>
    public double MarginOfDb(MeasureClass? measureClass) => measureClass == MeasureClass.Impact ? ImpactMarginDb : MarginDb;
}

/// <summary>How well runs repeated on an earlier day with the same kind of loop and meter; these are that day's own outputs.</summary>
/// <param name="Day">Which day it is, for counting days: its study, or its name where the study is not told.</param>
/// <param name="Class">The class; null: all segments together.</param>
/// <param name="NuRun">Degrees of freedom of <paramref name="SRunDb"/>.</param>
/// <param name="SRunDb">Run-to-run standard deviation of the run means before floor and prior, dB; null if that day had no degrees of
/// freedom.</param>
/// <param name="Kbar">Share of the reading variance that enters a run mean.</param>
/// <param name="NuE">Degrees of freedom of <paramref name="SEDb"/>.</param>
/// <param name="SEDb">Standard deviation of a reading about its run and segment, dB; null: unknown.</param>
public sealed record ArchiveLine(string Day, MeasureClass? Class, double NuRun, double? SRunDb, double Kbar, double NuE, double? SEDb);

/// <summary>
/// What looking costs. The order may be lengthened whenever somebody likes; each time that happens after a comparison could be seen is a
/// look. Of the 5 % the plan's end spends nine tenths, and every lengthening nine tenths of what was left before it, so that a crew that
/// lengthens at will and stops where it likes is wrong in at most 5 % (spending by looks: E. Slud and L. J. Wei, Journal of the American
/// Statistical Association 77, 1982; K. K. G. Lan and D. L. DeMets, Biometrika 70, 1983; docs/formulas.md, "Looks"). Runs count as
/// information.
/// </summary>
public sealed class Looks
{
    private const double SpentOfRest = 0.9;
    private const int MostAhead = 64;

    private readonly int[] _ends;
    private readonly Lazy<WordLevels> _now;
    private readonly Lazy<WordLevels>[] _ahead;

    /// <summary>The looks of a study so far.</summary>
    /// <param name="ends">Runs in the order as it was planned, then each time after it was lengthened; growing, one at least.</param>
    /// <param name="alpha">What all looks together may spend, 0..1.</param>
    public Looks(IReadOnlyList<int> ends, double alpha = 0.05)
    {
        ArgumentNullException.ThrowIfNull(ends);
        ArgumentOutOfRangeException.ThrowIfZero(ends.Count);
        _ends = [.. ends];
        _now = new Lazy<WordLevels>(() => At(_ends, alpha));
        _ahead = [.. Enumerable.Range(1, MostAhead).Select(more => new Lazy<WordLevels>(() => At([.. _ends, _ends[^1] + more], alpha)))];
    }

    /// <summary>How often the order was lengthened after a comparison could be seen.</summary>
    public int Lengthened => _ends.Length - 1;

    /// <summary>What a word needs at the order's end as it is now.</summary>
    public WordLevels Now => _now.Value;

    /// <summary>What a word needs at the end of an order that is lengthened once more.</summary>
    /// <param name="runs">By so many runs, 1 or more.</param>
    public WordLevels After(int runs) => _ahead[Math.Clamp(runs, 1, MostAhead) - 1].Value;

    private static WordLevels At(int[] ends, double alpha)
    {
        double[] information = [.. ends.Select(end => (double)end)];
        double[] spent = [.. ends.Select((_, look) => alpha * (1 - Math.Pow(1 - SpentOfRest, look + 1)))];
        if (ends.Length == 1)
        {
            return new WordLevels(spent[0], spent[0]);
        }

        double twoSided = SpendingBoundary.Limits(information, spent, isTwoSided: true)[^1];
        double oneSided = SpendingBoundary.Limits(information, spent, isTwoSided: false)[^1];
        return new WordLevels(StudentT.TwoSidedP(twoSided, double.PositiveInfinity), StudentT.UpperTail(oneSided, double.PositiveInfinity));
    }
}

/// <summary>The levels that one comparison's p must stay below for a word, 0..1.</summary>
/// <param name="Difference">Two-sided, for "difference shown".</param>
/// <param name="Equivalence">Of each of the two one-sided tests, for "equivalent within the margin".</param>
public sealed record WordLevels(double Difference, double Equivalence);
