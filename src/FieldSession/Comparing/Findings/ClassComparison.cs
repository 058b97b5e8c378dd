namespace FieldSession.Comparing;

/// <summary>
/// Code against reference over one class of segments (or all): everything the day says about it. Null means that it cannot be known
/// from these runs, and a remark says why.
/// </summary>
public sealed record ClassComparison
{
    /// <summary>The class; null: all segments together (overall value only).</summary>
    public MeasureClass? Class { get; init; }

    /// <summary>Runs of all codes that enter the model.</summary>
    public required int RunsCounted { get; init; }

    /// <summary>Segments that every code was read on.</summary>
    public required int SegmentsCompared { get; init; }

    /// <summary>Whether a straight drift over time is in the run model.</summary>
    public bool DriftInModel { get; init; }

    /// <summary>Run-to-run standard deviation of run means as it came, dB; null without degrees of freedom.</summary>
    public double? SRunDb { get; init; }

    /// <summary>Degrees of freedom of <see cref="SRunDb"/>.</summary>
    public double NuRun { get; init; }

    /// <summary>Standard deviation of a reading about its run and segment, dB; null without degrees of freedom.</summary>
    public double? SEDb { get; init; }

    /// <summary>Degrees of freedom of <see cref="SEDb"/>.</summary>
    public double NuE { get; init; }

    /// <summary>Share of the reading variance that enters a run mean; null if nothing is compared.</summary>
    public double? Kbar { get; init; }

    /// <summary>Standard deviation of the runs themselves, reading scatter taken off, dB.</summary>
    public double? SigmaRunEffectDb { get; init; }

    /// <summary>True: the run means agreed better than the readings allow, so the error was raised to what the readings allow.</summary>
    public bool FloorApplied { get; init; }

    /// <summary>True: repeatability of earlier days was lent.</summary>
    public bool PriorUsed { get; init; }

    /// <summary>What the archive lends to this class, used or not; null without one.</summary>
    public ArchivePrior? Prior { get; init; }

    /// <summary>The run-to-run standard deviation that the intervals use, dB.</summary>
    public double? SRunUsedDb { get; init; }

    /// <summary>The difference over all compared segments, each with the same weight; null: no comparison.</summary>
    public Estimate? Overall { get; init; }

    /// <summary>What the day could have shown at the level that its word needs, with what is known of that; null: unknown.</summary>
    public CouldShow? CouldShow { get; init; }

    /// <summary>Smallest true difference that this day would have shown with 80 % chance at 5 %, with its scatter, dB.</summary>
    public double? Mdd80Db { get; init; }

    /// <summary>
    /// How many more runs per code an open verdict needs, from the error of this very difference; null: it is settled, or unknown.
    /// </summary>
    public MoreRuns? MoreRuns { get; init; }

    /// <summary>
    /// The same as if the day were complete and no drift were taken out: 0 where the verdict is settled, else 1..10; null: not within 10 or
    /// unknown.
    /// </summary>
    public int? MoreRunsAsSeen { get; init; }

    /// <summary>The same with the scatter at its upper 80 % limit.</summary>
    public int? MoreRunsCautious { get; init; }

    /// <summary>Drift per hour; null without times, or if no code was driven twice.</summary>
    public DriftPerHour? Drift { get; init; }

    /// <summary>
    /// Mean time of the code minus mean time of the reference, hours: what a drift of 1 dB per hour would add to the difference.
    /// </summary>
    public double? OrderLeverHours { get; init; }

    /// <summary>Whether the difference depends on the segment; null for all segments together or without degrees of freedom.</summary>
    public Interaction? Interaction { get; init; }

    /// <summary>The difference by kind of surface, in the order of the route; empty for all segments together.</summary>
    public IReadOnlyList<KindEstimate> Kinds { get; init; } = [];

    /// <summary>The difference by segment, in the order of the route; empty for all segments together.</summary>
    public IReadOnlyList<SegmentEstimate> Segments { get; init; } = [];

    /// <summary>
    /// The overall line under an assumed repeatability, for days without an archive; never behind the verdict. Steady segments only.
    /// </summary>
    public Estimate? Assumed { get; init; }

    /// <summary>The exact randomisation test beside the verdict; null below 8 runs of the pair.</summary>
    public OrderTest? OrderTest { get; init; }

    /// <summary>The level of exposure; steady segments only.</summary>
    public RouteEnergy? RouteEnergy { get; init; }

    /// <summary>
    /// How much the result hangs on single runs, segments and flags; null: not asked for (<see cref="BlindComparison.InFull"/>).
    /// </summary>
    public Sensitivity? Sensitivity { get; init; }

    /// <summary>Runs that lie outside because too few of their segments have a valid level.</summary>
    public IReadOnlyList<int> RunsNotCounted { get; init; } = [];

    /// <summary>Segments that not every code has a valid level on.</summary>
    public IReadOnlyList<string> SegmentsNotCompared { get; init; } = [];

    /// <summary>The verdict in fixed words, or why there is none. Never "no difference".</summary>
    public required string Verdict { get; init; }

    /// <summary>Whether the plan asked its question elsewhere: the figures are to look at, and carry no headline word.</summary>
    public bool IsExplored { get; init; }

    /// <summary>Whether planned runs are still open: intervals are then unfinished, and no p is known.</summary>
    public bool IsUnfinished { get; init; }

    /// <summary>p, levels and intervals behind the word; null: no p is known.</summary>
    public WordBasis? Basis { get; init; }

    /// <summary>What the verdict rests on; null: there is none.</summary>
    public Conclusion? Conclusion { get; init; }

    /// <summary>What a reader has to know beside the numbers, in plain words.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
