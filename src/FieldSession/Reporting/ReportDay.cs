using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the sections of a report share.</summary>
/// <param name="Study">The study.</param>
/// <param name="Names">How codes are called.</param>
/// <param name="Day">The readings.</param>
/// <param name="Comparison">What they say.</param>
/// <param name="Ear">What the ear says.</param>
public sealed record ReportDay(Study Study, SpecNames Names, MeasuredDay Day, Comparison Comparison, EarFindings Ear)
{
    /// <summary>What the recordings say; null: there are none, or the ring is still covered.</summary>
    public RingFinding? Ring { get; init; }

    /// <summary>The readings by a question that was amended after a comparison could be seen; null: it was not.</summary>
    public Comparison? ChosenAfter { get; init; }
}
