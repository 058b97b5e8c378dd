namespace FieldSession.Comparing;

/// <summary>
/// One difference "code minus reference" with what is known about its error. Null: not known from this day. Formulas: docs/formulas.md.
/// </summary>
/// <param name="DifferenceDb">Code minus reference, dB; positive means louder.</param>
/// <param name="StandardErrorDb">Standard error, dB.</param>
/// <param name="Df">Degrees of freedom (Satterthwaite), need not be whole.</param>
/// <param name="Lo95Db">Lower end of the 95 % interval, dB.</param>
/// <param name="Hi95Db">Upper end of the 95 % interval, dB.</param>
/// <param name="P">Two-sided p: how often a difference at least this large comes by chance where there is none.</param>
/// <param name="Lo90Db">Lower end of the 90 % interval, dB: the one to hold against the margin.</param>
/// <param name="Hi90Db">Upper end of the 90 % interval, dB.</param>
/// <param name="PTost">p of the two one-sided tests: small means "within the margin".</param>
public sealed record Estimate(
    double DifferenceDb,
    double? StandardErrorDb = null,
    double? Df = null,
    double? Lo95Db = null,
    double? Hi95Db = null,
    double? P = null,
    double? Lo90Db = null,
    double? Hi90Db = null,
    double? PTost = null
)
{
    /// <summary>The margin that <see cref="PTost"/> asks about, dB; null with it.</summary>
    public double? MarginDb { get; init; }

    // less than one comparison of like with like, and wider to each side than any two specs differ
    private const double LeastDf = 1;
    private const double WidestDb = 20;

    /// <summary>
    /// Whether the interval is one that nobody can use: below 1 degree of freedom and wider than 20 dB to each side (docs/formulas.md, "Any
    /// line").
    /// </summary>
    public bool HasNoUsableInterval => Df < LeastDf && Hi95Db - Lo95Db > 2 * WidestDb;
}

/// <summary>The difference on one segment.</summary>
/// <param name="Segment">Its name.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Estimate">The difference there; its interval means this segment alone.</param>
/// <param name="PHolm">p after Holm over all compared segments of the pair, both classes; null where p is unknown.</param>
public sealed record SegmentEstimate(string Segment, string Kind, Estimate Estimate, double? PHolm);

/// <summary>The difference over the segments of one kind.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Segments">How many segments it was taken over.</param>
/// <param name="Estimate">The difference.</param>
public sealed record KindEstimate(string Kind, int Segments, Estimate Estimate);

/// <summary>A pair of codes out of three or more, from the one model of all codes.</summary>
/// <param name="Class">The class; null: all segments.</param>
/// <param name="First">The code that is subtracted from.</param>
/// <param name="Second">The code that is subtracted.</param>
/// <param name="Overall">First minus second over all compared segments.</param>
/// <param name="PHolm">p after Holm over all pairs of the class.</param>
public sealed record PairEstimate(MeasureClass? Class, string First, string Second, Estimate Overall, double? PHolm);

/// <summary>How the level of the same code moved in the course of the day.</summary>
/// <param name="BDbPerHour">Slope, dB per hour.</param>
/// <param name="StandardErrorDbPerHour">Its standard error; null: too few runs.</param>
/// <param name="Df">Degrees of freedom; null with the standard error.</param>
public sealed record DriftPerHour(double BDbPerHour, double? StandardErrorDbPerHour, double? Df);

/// <summary>Does the difference depend on the segment? The F test of it.</summary>
/// <param name="F">Ratio of mean squares.</param>
/// <param name="Df1">Degrees of freedom of the numerator.</param>
/// <param name="Df2">Degrees of freedom of the denominator.</param>
/// <param name="P">Upper tail probability.</param>
public sealed record Interaction(double F, double Df1, double Df2, double P);
