using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reporting;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>A study's readings with the terms that its plan fixed.</summary>
/// <param name="Day">The readings.</param>
/// <param name="Terms">Reference, margins, and how far the plan is driven.</param>
/// <param name="Remarks">How blind the study is, and what cannot be told yet.</param>
internal sealed record DayOfStudy(MeasuredDay Day, ComparisonTerms Terms, IReadOnlyList<string> Remarks)
{
    /// <summary>Which study it is; null: a file of readings alone.</summary>
    public StudyIdentity? Identity { get; init; }

    /// <summary>
    /// Compares the energy days, against a code or the plan's reference, and the units to say it in; null: a file of readings alone.
    /// </summary>
    public Func<string?, EnergyComparison?>? Energy { get; init; }

    /// <summary>The lines of the verdicts; null: a file of readings alone, of which only the meter speaks.</summary>
    public Func<Comparison, IReadOnlyList<VerdictLine>>? Verdicts { get; init; }

    /// <summary>What the recordings say; null: there are none, or the ring is covered.</summary>
    public RingFinding? Ring { get; init; }

    /// <summary>The same in words, or that it is covered; empty: there are no recordings.</summary>
    public IReadOnlyList<string> RingInWords { get; init; } = [];

    /// <summary>What a question would say that was amended after a comparison could be seen; empty: none was.</summary>
    public IReadOnlyList<string> ChosenAfter { get; init; } = [];

    /// <summary>The crew's units.</summary>
    public UnitSystem Units { get; init; }
}
