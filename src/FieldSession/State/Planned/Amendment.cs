namespace FieldSession.State;

/// <summary>A part of the plan that was changed after it was written down. What it was before stays readable.</summary>
/// <param name="What">The part, by the word that the plan folder calls it.</param>
/// <param name="From">What it was.</param>
/// <param name="To">What it became.</param>
/// <param name="Reason">Why, in the crew's words.</param>
/// <param name="AfterRun">How many runs had been begun; 0: nothing had been measured yet.</param>
/// <param name="OrderWasDriven">Whether the order as it was had been driven to its end.</param>
/// <param name="ResultsWereSeen">Whether somebody may have seen a comparison before (<see cref="Study.CanBeCompared"/>).</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Amendment(
    string What,
    string From,
    string To,
    string Reason,
    int AfterRun,
    bool OrderWasDriven,
    bool ResultsWereSeen,
    LineMark Mark
);
