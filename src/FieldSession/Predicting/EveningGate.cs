using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>What predictions and the reveal share: both wait until nothing is driven and nothing is in dispute.</summary>
internal static class EveningGate
{
    /// <summary>What rules out the evening now; null: nothing.</summary>
    /// <param name="study">The study.</param>
    /// <param name="onceOpen">What is said once the key is open.</param>
    public static Objection? ObjectionIn(Study study, Objection onceOpen) => Gate.ForWriting(study) ?? study switch
    {
        { Opening: not null } => onceOpen,
        _ when study.Runs.Find(run => run.IsOn) is { } run => new Objection(PredictingWords.RunIsStillOn(run), PredictingWords.EndRunFirst),
        _ when study.Unsettled.Any() => new Objection(PredictingWords.LaptopsAreInConflict, PredictingWords.SettleConflictFirst),
        _ => null,
    };
}
