using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// What looking costs. The order may be lengthened whenever somebody likes; each time that happens after a comparison could be seen is a look. Of the
/// 5 % the plan's end spends nine tenths, and every lengthening nine tenths of what was left before it, so that a crew that lengthens at will and stops
/// where it likes is wrong in at most 5 % (spending by looks: E. Slud and L. J. Wei, Journal of the American Statistical Association 77, 1982; K. K. G. Lan
/// and D. L. DeMets, Biometrika 70, 1983; docs/formulas.md, "Looks"). Runs count as information.
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
        return new WordLevels(
            StudentT.TwoSidedP(twoSided, double.PositiveInfinity),
            StudentT.UpperTail(oneSided, double.PositiveInfinity));
    }
}
