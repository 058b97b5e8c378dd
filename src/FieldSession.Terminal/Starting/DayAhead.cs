using FieldSession.Checking;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Starting;

/// <summary>How far a study has come and what is due in it, told without opening it for writing.</summary>
/// <param name="Done">What is done, in words.</param>
/// <param name="Next">What is due, in words.</param>
/// <param name="Command">The command that does it.</param>
internal sealed record DayAhead(string Done, string Next, string Command)
{
    /// <summary>Of a study; null: it holds no plan.</summary>
    public static DayAhead? Of(Study study) => study switch
    {
        { Opening: not null } => new(StageWords.KeyIsOpen, StageWords.TheReport, KeyTable.Report),
        { Plan: null } => null,
        { OrderDriven: true, Runs.Count: > 0 } => Evening(study),
        { RunOn: { } run } => new(StageWords.Driven(RunsDriven(study), study.Plan.Order.Count), StageWords.FinishRun(run.Number), KeyTable.Drive),
        { Fittings.Count: > 0 } => new(Driven(study), NextRun(study), KeyTable.Drive),
        _ => new(StageWords.Planned, StageWords.SealThenTakeCodes, CodesCommand.Name),
    };

    private static DayAhead Evening(Study study)
    {
        string done = StageWords.AllDriven(study.Plan!.Order.Count);
        string[] missing = [.. study.StillToPredict.Select(member => member.Name)];
        return RunChecks.AgainstPredicting(study) is { } objection ? new(done, objection.Why, KeyTable.Drive)
            : study.Predictions.Count == 0 ? new(done, StageWords.ReviewThenPredict, KeyTable.Review)
            : KeyGate.ObjectionIn(study) is null ? new(StageWords.AllPredicted, StageWords.OpenTheKey, KeyTable.Reveal)
            : new(done, StageWords.PredictionsMissing(missing), KeyTable.Predict);
    }

    private static string NextRun(Study study) => RunChecks.AgainstNextRun(study).FirstOrDefault() is { } objection
        ? StageWords.BeforeRun(RunsDriven(study) + 1, objection.Why)
        : StageWords.DriveRun(RunsDriven(study) + 1);

    private static string Driven(Study study) => study.Runs.Count > 0 ? StageWords.Driven(RunsDriven(study), study.Plan!.Order.Count) : StageWords.CodesAreIn;

    private static int RunsDriven(Study study) => study.Runs.Count - Aborts.CountIn(study) - (study.RunOn is null ? 0 : 1);
}
