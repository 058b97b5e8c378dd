using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Measures;

namespace FieldSession.Reviewing;

/// <summary>
/// Numbers as people read them, rounded once: dB to 0.1, a difference and its error to 0.01 where its 95 % interval is narrower than 0.5
/// dB, p to two significant digits; more digits where a rounded limit or p would contradict the word beside it
/// (<see cref="EnoughDigits"/>). Unknown is said, never shown as a number.
/// </summary>
public static class Figures
{
    /// <summary>The words for a value that this day does not give.</summary>
    public const string Unknown = ReviewingWords.NotKnownYet;

    private const double NarrowDb = 0.5;
    private const double SmallestShownP = 0.0001;

    /// <summary>A level, a width, a scatter in dB: "2.1".</summary>
    public static string Db(double? db) => db is { } known ? Text(known, "0.0") : Unknown;

    /// <summary>A scatter or a rate, of which tenths say too little: "0.25".</summary>
    public static string FineDb(double? db) => db is { } known ? Text(known, "0.00") : Unknown;

    /// <summary>A difference without an error of its own: "+0.7".</summary>
    public static string SignedDb(double db) => Text(db, "+0.0;-0.0;0.0");

    /// <summary>A rate with its sign: "-0.06".</summary>
    public static string SignedFineDb(double db) => Text(db, "+0.00;-0.00;0.00");

    /// <summary>A margin as it was agreed, not rounded to tenths: "1", "0.75".</summary>
    public static string MarginDb(double db) => Text(db, "0.####");

    /// <summary>A difference with its sign: "+0.7".</summary>
    public static string Difference(Estimate? estimate) =>
        estimate is null ? Unknown : EnoughDigits.WithSign(estimate.DifferenceDb, Decimals(estimate));

    /// <summary>The standard error: "0.2".</summary>
    public static string Error(Estimate? estimate) =>
        estimate?.StandardErrorDb is { } error ? EnoughDigits.Plain(error, Decimals(estimate)) : Unknown;

    /// <summary>The 95 % interval: "+0.1 to +1.2".</summary>
    public static string Interval95(Estimate? estimate) => Interval(estimate, estimate?.Lo95Db, estimate?.Hi95Db);

    /// <summary>The 90 % interval, the one to hold against the margin.</summary>
    public static string Interval90(Estimate? estimate) => Interval(estimate, estimate?.Lo90Db, estimate?.Hi90Db);

    /// <summary>The interval that agrees with the word: "98.2 % interval -0.1 to +1.2".</summary>
    /// <param name="basis">What the word rests on.</param>
    /// <param name="estimate">The difference.</param>
    /// <param name="ofEquivalence">Whether the word says that two codes are the same within the margin.</param>
    public static string IntervalOfWord(WordBasis basis, Estimate estimate, bool ofEquivalence)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(estimate);
        (double low, double high) = ofEquivalence ? (basis.LowEquivalenceDb, basis.HighEquivalenceDb) : (basis.LowDb, basis.HighDb);
        double outside = ofEquivalence ? 2 * basis.Asked.Equivalence : basis.Asked.Difference;
        int decimals = EnoughDigits.For(Decimals(estimate), [low, high], Bounds(estimate));
        return $"{Percent(1 - outside)} interval {EnoughDigits.WithSign(low, decimals)} to {EnoughDigits.WithSign(high, decimals)}";
    }

    /// <summary>A share as percent, with as many places as it needs: "95 %", "95.5 %", "99.55 %".</summary>
    public static string Percent(double share) => $"{Text(100 * share, "0.###")} %";

    /// <summary>What a day could have shown, with how well that is known: "0.9 (0.6 to 2.6)".</summary>
    public static string CouldShow(CouldShow? shown) =>
        shown is null ? Unknown : $"{Db(shown.Db)} ({Db(shown.LowDb)} to {Db(shown.HighDb)})";

    /// <summary>
    /// The 95 % interval for a narrow column, each limit with the digits that it needs itself: "+0.1..+1.2"; null: there is none.
    /// </summary>
    public static string? Short95(Estimate? estimate)
    {
        if (estimate is not { Lo95Db: { } low, Hi95Db: { } high, HasNoUsableInterval: false })
        {
            return null;
        }

        string Limit(double db) => EnoughDigits.WithSign(db, EnoughDigits.For(LeastDecimals(estimate), [db], Bounds(estimate)));
        return $"{Limit(low)}..{Limit(high)}";
    }

    /// <summary>
    /// A probability to two significant digits: "0.031", "&lt; 0.0001"; more where it would be printed on the other side of 5 % or 2.5 %.
    /// </summary>
    public static string Probability(double? p) =>
        p switch
        {
            null => Unknown,
            < SmallestShownP => "< 0.0001",
            { } known => Significant(known),
        };

    /// <summary>A count that may be unknown, with the words for unknown given by who asks.</summary>
    public static string Count(int? count, string unknown) => count is { } known ? known.ToString(CultureInfo.InvariantCulture) : unknown;

    private static ReadOnlySpan<double> Levels => [0.05, 0.025];

    private static string Significant(double p)
    {
        string two = p.ToString("G2", CultureInfo.CurrentCulture);
        double printed = double.Parse(two, CultureInfo.CurrentCulture);
        foreach (double level in Levels)
        {
            if (Math.Sign(printed - level) != Math.Sign(p - level))
            {
                return EnoughDigits.Plain(p, EnoughDigits.For(3, [p], Levels));
            }
        }

        return two;
    }

    private static string Interval(Estimate? estimate, double? low, double? high) =>
        estimate switch
        {
            { HasNoUsableInterval: true } => ReviewingWords.NoUsableInterval,
            not null when low is { } from && high is { } to =>
                $"{EnoughDigits.WithSign(from, Decimals(estimate))} to {EnoughDigits.WithSign(to, Decimals(estimate))}",
            _ => Unknown,
        };

    /// <summary>One number of decimals for all that is told of an estimate.</summary>
    private static int Decimals(Estimate estimate)
    {
        double[] limits = [.. new[] { estimate.Lo95Db, estimate.Hi95Db, estimate.Lo90Db, estimate.Hi90Db }.OfType<double>()];
        return EnoughDigits.For(LeastDecimals(estimate), limits, Bounds(estimate));
    }

    private static double[] Bounds(Estimate estimate) => estimate.MarginDb is { } margin ? [0, margin, -margin] : [0];

    private static int LeastDecimals(Estimate estimate) => estimate.Hi95Db - estimate.Lo95Db < NarrowDb ? 2 : 1;

    private static string Text(double number, string format) => number.ToString(format, CultureInfo.CurrentCulture);
}
