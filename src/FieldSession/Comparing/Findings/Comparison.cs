namespace FieldSession.Comparing;

/// <summary>The blind comparison of a day: codes against a reference, nothing about what a code is.</summary>
public sealed record Comparison
{
    /// <summary>The code that the others are compared with; null: there is no run yet.</summary>
    public required string? Reference { get; init; }

    /// <summary>Margin of equivalence on steady and all segments, dB.</summary>
    public required double MarginDb { get; init; }

    /// <summary>Margin of equivalence on impacts, dB.</summary>
    public required double ImpactMarginDb { get; init; }

    /// <summary>How many readings there are and how many do not count.</summary>
    public required ReadingCounts Readings { get; init; }

    /// <summary>What was read on each code, in the order of first driving.</summary>
    public IReadOnlyList<CodeReadings> Codes { get; init; } = [];

    /// <summary>One entry for every code that is not the reference, in the order of first driving.</summary>
    public IReadOnlyList<CodeComparison> Comparisons { get; init; } = [];

    /// <summary>Candidates against each other, where the plan asks for every pair; empty elsewhere.</summary>
    public IReadOnlyList<CodeComparison> AskedPairs { get; init; } = [];

    /// <summary>The same from the main segments alone; empty where the plan names none.</summary>
    public IReadOnlyList<CodeComparison> AskedPairsOnMainSegments { get; init; } = [];

    /// <summary>
    /// The segments that the main question is answered on, where the plan names them; null: all that the main measure takes.
    /// </summary>
    public IReadOnlyList<string>? MainSegments { get; init; }

    /// <summary>The comparisons from the main segments alone; empty where the plan names none.</summary>
    public IReadOnlyList<CodeComparison> OnMainSegments { get; init; } = [];

    /// <summary>The pairs of the main segments alone; empty where the plan names none, or for fewer than three codes.</summary>
    public IReadOnlyList<PairEstimate> PairsOnMainSegments { get; init; } = [];

    /// <summary>Whether planned runs are still open: every interval is then unfinished, and no p is known.</summary>
    public bool IsUnfinished { get; init; }

    /// <summary>How often the order was lengthened after a comparison could be seen.</summary>
    public int Lengthened { get; init; }

    /// <summary>
    /// The comparisons that the main question is answered by: those of the main segments where the plan names them, else all.
    /// </summary>
    public IReadOnlyList<CodeComparison> Main => MainSegments is null ? Comparisons : OnMainSegments;

    /// <summary>
    /// Every comparison that the plan asks for: those of <see cref="Main"/>, and candidates against each other where it asks for every
    /// pair.
    /// </summary>
    public IReadOnlyList<CodeComparison> Asked => [.. Main, .. MainSegments is null ? AskedPairs : AskedPairsOnMainSegments];

    /// <summary>With three codes and more: every pair of them, by class.</summary>
    public IReadOnlyList<PairEstimate> Pairs { get; init; } = [];

    /// <summary>
    /// Readings that are conspicuous on the loud side, worst first: a hint to look at the note, never a reason to leave out.
    /// </summary>
    public IReadOnlyList<SuspiciousReading> Suspicious { get; init; } = [];

    /// <summary>What holds for the day as a whole, in plain words.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}

/// <summary>How many readings there are.</summary>
/// <param name="Total">All readings taken.</param>
/// <param name="Spoilt">Of these, flagged ones.</param>
/// <param name="Missed">Planned readings that were not taken.</param>
/// <param name="ByCause">Flagged readings by cause, in the order of the causes' names; without a cause: "not said".</param>
public sealed record ReadingCounts(int Total, int Spoilt, int Missed, IReadOnlyDictionary<string, int> ByCause)
{
    /// <summary>Readings of runs that were driven again; not among the spoilt ones.</summary>
    public int Replaced { get; init; }

    /// <summary>Readings that do not count, for either reason.</summary>
    public int LeftOut => Spoilt + Replaced;
}

/// <summary>What was read on one code.</summary>
/// <param name="Code">The code.</param>
/// <param name="Runs">Its runs.</param>
/// <param name="Readings">Its readings, spoilt ones included.</param>
/// <param name="Spoilt">Its spoilt readings.</param>
/// <param name="MeanWidthDb">Mean width of its valid ranges on steady segments, dB: how much the display wandered; null without
/// one.</param>
public sealed record CodeReadings(string Code, int Runs, int Readings, int Spoilt, double? MeanWidthDb)
{
    /// <summary>Its readings in runs that were driven again; not among the spoilt ones.</summary>
    public int Replaced { get; init; }
}

/// <summary>A reading that is louder than the rest of its run and segment suggests. Named without any code's value.</summary>
/// <param name="Run">The run.</param>
/// <param name="Segment">The segment.</param>
/// <param name="Class">The segment's class.</param>
/// <param name="StudentisedResidual">Externally studentised residual, in standard deviations.</param>
/// <param name="PBonferroni">One-sided p times the number of levels of the class, at most 1; listed below 0.05.</param>
public sealed record SuspiciousReading(int Run, string Segment, MeasureClass Class, double StudentisedResidual, double PBonferroni);

/// <summary>The three views on one pair: all segments, steady ones, impacts. A class is null if the route has no such segment.</summary>
/// <param name="All">Over all segments (overall value only).</param>
/// <param name="Steady">Over the steady segments.</param>
/// <param name="Impact">Over the impact segments.</param>
public sealed record ClassComparisons(ClassComparison? All, ClassComparison? Steady, ClassComparison? Impact)
{
    /// <summary>The view of a class; null asks for all segments.</summary>
    public ClassComparison? Of(MeasureClass? measureClass) =>
        measureClass switch
        {
            null => All,
            MeasureClass.Steady => Steady,
            _ => Impact,
        };
}

/// <summary>One code against the reference.</summary>
/// <param name="Code">The code.</param>
/// <param name="Reference">The reference code.</param>
/// <param name="Classes">From the readings that count.</param>
/// <param name="WithSpoilt">The same from all readings, spoilt ones put back.</param>
public sealed record CodeComparison(string Code, string Reference, ClassComparisons Classes, ClassComparisons WithSpoilt);
