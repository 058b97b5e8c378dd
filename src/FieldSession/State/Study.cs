using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>
/// What is known of the study so far. It is blind for life: it never learns which spec a code means. Every fact
/// of the journal makes a new one from the one before.
/// </summary>
public sealed record Study
{
    /// <summary>How many acts can be taken back one after another.</summary>
    public const int UndoDepth = 50;

    /// <summary>The study before its first fact.</summary>
    public static Study Empty { get; } = new();

    /// <summary>The plan; null: none yet.</summary>
    public Plan? Plan { get; init; }

    /// <summary>
    /// The plan as it was when it was first amended after a comparison could be seen: its question stays the headline. Null: it never was.
    /// </summary>
    public Plan? FrozenPlan { get; init; }

    /// <summary>
    /// The plan whose question the headline answers: measure, segments and margins chosen after the data never change it.
    /// </summary>
    public Plan? Asked =>
        FrozenPlan is { } frozen && Plan is { } plan
            ? plan with
            {
                MainMeasure = frozen.MainMeasure,
                MainSegments = frozen.MainSegments,
                MarginDb = frozen.MarginDb,
                ImpactMarginDb = frozen.ImpactMarginDb,
            }
            : Plan;

    /// <summary>
    /// Whether somebody may have seen a comparison: two codes have been read. Screens may be covered; 'compare', 'review' and exports are
    /// not.
    /// </summary>
    public bool CanBeCompared => Runs.Where(run => run.Readings.Any()).Select(run => run.Code).Distinct().Skip(1).Any();

    /// <summary>The fittings, each with its own codes; the last is the one on the cars.</summary>
    public ImmutableList<Fitting> Fittings { get; init; } = [];

    /// <summary>What was changed of the plan after it was written down, in order.</summary>
    public ImmutableList<Amendment> Amendments { get; init; } = [];

    /// <summary>The repeatability of earlier days that the plan asked for; null: it did not.</summary>
    public TakenArchive? Archive { get; init; }

    /// <summary>The sessions, in order.</summary>
    public ImmutableList<Session> Sessions { get; init; } = [];

    /// <summary>The runs, in driven order.</summary>
    public ImmutableList<Run> Runs { get; init; } = [];

    /// <summary>The conditions noted, in order.</summary>
    public ImmutableList<Weather> Weather { get; init; } = [];

    /// <summary>The checks made with typed values, in order.</summary>
    public ImmutableList<CheckRecord> Checks { get; init; } = [];

    /// <summary>The brackets that are driven again, in order.</summary>
    public ImmutableList<Rerun> Reruns { get; init; } = [];

    /// <summary>
    /// For each run its place in the plan's order, from 0; longer than the order where brackets are driven again. Null: run by run.
    /// </summary>
    public ImmutableList<int>? Steps { get; init; }

    /// <summary>The overrides, in order.</summary>
    public ImmutableList<Override> Overrides { get; init; } = [];

    /// <summary>The notes, in order.</summary>
    public ImmutableList<Note> Notes { get; init; } = [];

    /// <summary>The ratings, in order; <see cref="RatingCover"/> says which of them may be shown.</summary>
    public ImmutableList<SeatRating> Ratings { get; init; } = [];

    /// <summary>Numbers of the runs whose ratings were closed by hand.</summary>
    public ImmutableList<int> RatingsClosed { get; init; } = [];

    /// <summary>The sets of forced-choice trials, in the order they were planned.</summary>
    public ImmutableList<ChoiceSet> ChoiceSets { get; init; } = [];

    /// <summary>The recordings, one for each run that has one, in the order they were taken.</summary>
    public ImmutableList<RunRecording> Recordings { get; init; } = [];

    /// <summary>The gains of the chains, in the order they were found.</summary>
    public ImmutableList<ChainGain> ChainGains { get; init; } = [];

    /// <summary>The chains that were described, in order.</summary>
    public ImmutableList<NamedChain> Chains { get; init; } = [];

    /// <summary>The marks for the recorder's clock, in order.</summary>
    public ImmutableList<LineMark> ClockMarks { get; init; } = [];

    /// <summary>What meters' own logs said about the typed readings, in order.</summary>
    public ImmutableList<LogComparison> LogComparisons { get; init; } = [];

    /// <summary>That the ring was uncovered early; null: it was not.</summary>
    public RingOpening? RingOpening { get; init; }

    /// <summary>The legs of the energy days, in the order they were typed.</summary>
    public ImmutableList<EnergyLeg> Legs { get; init; } = [];

    /// <summary>The locked predictions, in order.</summary>
    public ImmutableList<Prediction> Predictions { get; init; } = [];

    /// <summary>That the key was opened; null: not yet.</summary>
    public Opening? Opening { get; init; }

    /// <summary>The last facts that can still be taken back, newest last, each with the study before it.</summary>
    public ImmutableList<Undoable> Undoables
    {
        get;
        init
        {
            // any further act ends the row of undos
            field = value;
            Undone = null;
        }
    } = [];

    /// <summary>
    /// The undo that was the last act, with the study before it, which remembers the undo before that; null: the last act was none.
    /// </summary>
    public Undoable? Undone { get; init; }

    /// <summary>The laptop whose acts are told.</summary>
    public Hand Hand { get; init; } = Hand.First;

    /// <summary>The other laptops, by strand ("": the first).</summary>
    public ImmutableDictionary<string, Hand> OtherHands { get; init; } = ImmutableDictionary<string, Hand>.Empty;

    /// <summary>Name of the study's first strand on disk; null: there is only one.</summary>
    public string? FirstStrand { get; init; }

    /// <summary>Where laptops, unaware of each other, stored things that contradict each other, in order.</summary>
    public ImmutableList<Conflict> Conflicts { get; init; } = [];

    /// <summary>Why nothing may be written, such as an entry by a newer program; null: writing is free.</summary>
    public string? ReadOnlyBecause { get; init; }

    /// <summary>The fitting on the cars; null: not sealed.</summary>
    public Fitting? Fitting => Fittings.Count == 0 ? null : Fittings[^1];

    /// <summary>The run that is on now; null: none.</summary>
    public Run? RunOn => LastRun is { IsOn: true } run ? run : null;

    /// <summary>The last run, on or over; null: none yet.</summary>
    public Run? LastRun =>
        Runs.Count == 0 ? null
        : IsShared ? this.OwnLastRun()
        : Runs[^1];

    /// <summary>The session that is open; null: none.</summary>
    public Session? SessionOn => LastSession is { After: null } session ? session : null;

    /// <summary>The last session, open or closed; null: none yet.</summary>
    public Session? LastSession =>
        Sessions.Count == 0 ? null
        : IsShared ? this.OwnLastSession()
        : Sessions[^1];

    /// <summary>Whether more than one laptop has written into the study.</summary>
    public bool IsShared => !OtherHands.IsEmpty;

    /// <summary>The segment that the next reading belongs to; null: no run is on.</summary>
    public Segment? NextSegment =>
        RunOn is { } run && Plan is { } plan && run.NextSegment <= plan.Route.Count ? plan.Route[run.NextSegment - 1] : null;

    /// <summary>The place in the order that the next run takes; null: the order is driven to its end, or there is no plan.</summary>
    public Place? NextPlace => NextStep is { } step ? Plan!.Order[step] : null;

    /// <summary>How many runs are to be driven, re-runs among them.</summary>
    public int RunsToDrive => Steps?.Count ?? Plan?.Order.Count ?? 0;

    /// <summary>The place of the next run in the plan's order, from 0; null: the order is driven to its end, or there is no plan.</summary>
    public int? NextStep => this.StepOf(car: null);

    /// <summary>The code that the order asks for next; null: none, or not sealed.</summary>
    public SpecCode? CodeAsked => NextPlace is { } place ? Fitting?.At(place) : null;

    /// <summary>
    /// The reference code: the one at place R of the first fitting, or in a study without sealing the first one driven; null:
    /// not known yet. It stays when new codes are drawn, because nobody can tell which of them is the same spec.
    /// </summary>
    public SpecCode? ReferenceCode =>
        Fittings.Count > 0 ? Fittings[0].At(Place.Reference)
        : Runs.Count > 0 ? Runs[0].Code
        : null;

    /// <summary>The code at place R of the fitting that drew a code: what brackets its runs; null: not known yet.</summary>
    public SpecCode? ReferenceCodeOf(SpecCode code) =>
        Fittings.Find(fitting => fitting.Codes.Contains(code))?.At(Place.Reference) ?? ReferenceCode;

    /// <summary>The commitments that the custodian published, one for every fitting that has one, in order.</summary>
    public IEnumerable<string> Commitments => Fittings.Select(fitting => fitting.Commitment).OfType<string>();

    /// <summary>The codes that were driven, in the order of their first run, then those driven on energy days alone.</summary>
    public IEnumerable<SpecCode> DrivenCodes => Runs.Select(run => run.Code).Concat(Legs.Select(leg => leg.Figures.Code)).Distinct();

    /// <summary>Whether anything was driven, on the route or on an energy day.</summary>
    public bool IsAnythingDriven => Runs.Count > 0 || Legs.Count > 0;

    /// <summary>Whether there is a run of this number, from 1.</summary>
    public bool HasRun(int number) => number >= 1 && number <= Runs.Count;

    /// <summary>Every code of the study in the order of its places, then codes driven besides.</summary>
    public IEnumerable<SpecCode> Codes => Fittings.SelectMany(f => f.Codes).Concat(Runs.Select(r => r.Code)).Distinct();

    /// <summary>Whether the order of the plan is driven to its end and no run is on.</summary>
    public bool OrderDriven => Plan is not null && Runs.TrueForAll(run => !run.IsOn) && this.IsEveryStepDriven();

    /// <summary>Whether the runs of this laptop's car are driven while those of another car are not, as far as is known here.</summary>
    public bool IsOwnOrderDriven => Fittings.Count > 0 && Runs.Count > 0 && RunOn is null && NextStep is null && !OrderDriven;

    /// <summary>The conflicts that nobody has settled.</summary>
    public IEnumerable<Conflict> Unsettled => Conflicts.Where(conflict => conflict.Settlement is null);

    /// <summary>The members of the crew whose prediction is still open.</summary>
    public IEnumerable<CrewMember> StillToPredict =>
        Plan is null ? [] : Plan.Crew.Where(member => !Predictions.Any(p => CrewMember.SamePerson(p.Person, member.Name)));

    /// <summary>How far the study has come.</summary>
    public Stage Stage =>
        this switch
        {
            { Opening: not null } => Stage.Revealed,
            { Predictions.Count: > 0 } when !StillToPredict.Any() => Stage.Predicted,
            { Runs.Count: > 0 } => Stage.Driving,
            { Fittings.Count: > 0 } => Stage.Sealed,
            { Plan: not null } => Stage.Planned,
            _ => Stage.Empty,
        };

    /// <summary>Whether readings can no longer be added or changed: a prediction is locked, or the key is open.</summary>
    public bool DataFrozen => Predictions.Count > 0 || Opening is not null;

    /// <summary>This study with its last run changed.</summary>
    public Study WithLastRun(Run run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return this with { Runs = Runs.SetItem(run.Number - 1, run) };
    }

    /// <summary>The study before one of the last acts, an undo too; null: that is not known any more.</summary>
    /// <param name="line">Number of the act's line.</param>
    public Study? Before(int line)
    {
        for (Undoable? undone = Undone; undone is not null; undone = undone.Before.Undone)
        {
            if (undone.Line == line)
            {
                return undone.Before;
            }
        }

        int at = Undoables.FindLastIndex(act => act.Line == line);
        return at < 0 ? null : Undoables[at].Before with { Undoables = Undoables.GetRange(0, at) };
    }

    /// <summary>This study remembering that the fact just applied to <paramref name="before"/> can be taken back.</summary>
    /// <param name="before">The study before the fact.</param>
    /// <param name="mark">Where the fact is.</param>
    /// <param name="words">The act in words, for the crew alone.</param>
    /// <param name="flagged">The reading whose flag it set or took back; null: none.</param>
    public Study Undoably(Study before, LineMark mark, string words, LineName? flagged = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ImmutableList<Undoable> kept = before.Undoables.Count < UndoDepth ? before.Undoables : before.Undoables.RemoveAt(0);
        return this with { Undoables = kept.Add(new Undoable(mark.Number, words, before with { Undoables = [] }) { Flagged = flagged }) };
    }
}

/// <summary>A fact that can still be taken back.</summary>
/// <param name="Line">Its number in the journal.</param>
/// <param name="Words">The act in words.</param>
/// <param name="Before">The study before it.</param>
public sealed record Undoable(int Line, string Words, Study Before)
{
    /// <summary>The reading whose flag it set or took back; null: it is no flag.</summary>
    public LineName? Flagged { get; init; }
}
