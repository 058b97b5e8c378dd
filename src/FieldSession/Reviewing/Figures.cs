using System.Globalization;
using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>
/// Numbers as people read them, rounded once: dB to 0.1, a difference and its error to 0.01 where its 95 % interval is narrower than 0.5 dB,
/// p to two significant digits. Unknown is said, never shown as a number.
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
    public static string MarginDb(double db) => Text(db, "0.##");

    /// <summary>A difference with its sign: "+0.7".</summary>
    public static string Difference(Estimate? estimate) =>
        estimate is null ? Unknown : Signed(estimate.DifferenceDb, estimate);

    /// <summary>The standard error: "0.2".</summary>
    public static string Error(Estimate? estimate) =>
        estimate?.StandardErrorDb is { } error ? Text(error, IsNarrow(estimate) ? "0.00" : "0.0") : Unknown;

    /// <summary>The 95 % interval: "+0.1 to +1.2".</summary>
    public static string Interval95(Estimate? estimate) => Interval(estimate, estimate?.Lo95Db, estimate?.Hi95Db);

    /// <summary>The 90 % interval, the one to hold against the margin.</summary>
    public static string Interval90(Estimate? estimate) => Interval(estimate, estimate?.Lo90Db, estimate?.Hi90Db);

    /// <summary>A probability to two significant digits: "0.031", "&lt; 0.0001".</summary>
    public static string Probability(double? p) => p switch
    {
        null => Unknown,
        < SmallestShownP => "< 0.0001",
        { } known => known.ToString("G2", CultureInfo.CurrentCulture),
    };

    /// <summary>A count that may be unknown, with the words for unknown given by who asks.</summary>
    public static string Count(int? count, string unknown) => count is { } known ? known.ToString(CultureInfo.InvariantCulture) : unknown;

    private static string Interval(Estimate? estimate, double? low, double? high) =>
        estimate is not null && low is { } from && high is { } to ? $"{Signed(from, estimate)} to {Signed(to, estimate)}"
        : estimate is { HasNoUsableInterval: true } ? ReviewingWords.NoUsableInterval
        : Unknown;

    private static string Signed(double db, Estimate estimate) =>
        Text(db, IsNarrow(estimate) ? "+0.00;-0.00;0.00" : "+0.0;-0.0;0.0");

    private static bool IsNarrow(Estimate estimate) => estimate.Hi95Db - estimate.Lo95Db < NarrowDb;

    private static string Text(double number, string format) => number.ToString(format, CultureInfo.CurrentCulture);
}
