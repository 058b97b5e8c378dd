using FieldSession.Checking;
using FieldSession.State;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Starting;

/// <summary>How far a study has come and what is due in it, told without opening it for writing. What is due is the rule of <see cref="NextStep"/>.</summary>
/// <param name="Done">What is done, in words.</param>
/// <param name="Next">What is due, in words.</param>
/// <param name="Command">The command that does it.</param>
internal sealed record DayAhead(string Done, string Next, string Command)
{
    /// <summary>Of a study; null: it holds no plan.</summary>
    public static DayAhead? Of(Study study) => study switch
    {
        { Plan: null } => null,
        { Runs.Count: 0, Fittings.Count: 0, Opening: null } => new(StageWords.Planned, StageWords.SealThenTakeCodes, CodesCommand.Name),
        _ => On(NextStep.Screen(study), study),
    };

    private static DayAhead On(string screen, Study study) => screen switch
    {
        ScreenName.Report => new(StageWords.KeyIsOpen, StageWords.TheReport, screen),
        ScreenName.Reveal => new(StageWords.AllPredicted, StageWords.OpenTheKey, screen),
        ScreenName.Predict => new(Driven(study), StageWords.PredictionsMissing([.. study.StillToPredict.Select(member => member.Name)]), screen),
        ScreenName.Review => new(Driven(study), StageWords.ReviewThenPredict, screen),
        _ => new(Driven(study), OnTheRoad(study), screen),
    };

    private static string OnTheRoad(Study study) => study switch
    {
        { OrderDriven: true } when RunChecks.AgainstPredicting(study) is { } objection => objection.Why,
        { RunOn: { } run } => StageWords.FinishRun(run.Number),
        _ when RunChecks.AgainstNextRun(study).FirstOrDefault() is { } objection => StageWords.BeforeRun(RunsDriven(study) + 1, objection.Why),
        _ => StageWords.DriveRun(RunsDriven(study) + 1),
    };

    private static string Driven(Study study) => study switch
    {
        { OrderDriven: true, Runs.Count: > 0 } => StageWords.AllDriven(study.Plan!.Order.Count),
        { Runs.Count: > 0 } => StageWords.Driven(RunsDriven(study), study.Plan!.Order.Count),
        _ => StageWords.CodesAreIn,
    };

    private static int RunsDriven(Study study) => study.Runs.Count - Aborts.CountIn(study) - (study.RunOn is null ? 0 : 1);
}
