using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>The header: which study, which run on which code, where in the order, safe on disk or not, the time.</summary>
internal static class HeaderPage
{
    /// <summary>The header's one row.</summary>
    /// <param name="study">The study.</param>
    /// <param name="lines">How many lines the journal has.</param>
    /// <param name="notSavedBecause">Why the last act is not on disk; null: all is safe.</param>
    /// <param name="now">The time of day.</param>
    /// <param name="columns">Columns of the terminal.</param>
    public static PageRow Of(Study study, int lines, string? notSavedBecause, DateTimeOffset now, int columns)
    {
        PageRow right = notSavedBecause is null
            ? PageRow.Of($"saved {lines}  {now:t} ", Ink.Bar)
            : PageRow.Of(Columns.Cut($" NOT SAVED: {notSavedBecause} ", columns * 2 / 3), Ink.Alarm).And($" {now:t} ", Ink.Bar);
        return PageRow.Of(Left(study, columns - right.Width - 1), Ink.Bar).WithRight(right, columns);
    }

    // The order may be long; where it does not fit, the place in words is left.
    private static string Left(Study study, int columns)
    {
        if (study.Plan is not { } plan)
        {
            return ShellWords.NoStudyYet;
        }

        string place = $" {plan.StudyName}  {Place(study)}";
        string withOrder = $"{place}  {Order(study)}";
        return Columns.Of(withOrder) <= columns ? withOrder : place;
    }

    private static string Place(Study study)
    {
        int planned = study.RunsToDrive;
        return study switch
        {
            { RunOn: { } run } => $"{ShellWords.RunOfOrder(run.Number, run.Turn, planned)}  {run.Code}{(run.Doubt is null ? "" : "?")}",
            { CodeAsked: { } code } => ShellWords.StoppedBeforeRun(study, planned, code),
            { OrderDriven: true, Runs.Count: > 0 } => ShellWords.AllRunsDriven(planned, Aborts.CountIn(study)),
            { IsOwnOrderDriven: true } => ShellWords.OwnOrderDriven,
            _ => "not sealed",
        };
    }

    // R [1] R: the place that is driven, or comes next, in brackets.
    private static string Order(Study study)
    {
        int? at = study switch
        {
            { Steps: null } => study.RunOn is { } on ? on.Step : study.NextStep,
            { RunOn: { } run } => run.Turn,
            _ => study.NextTurn(),
        };
        return string.Join(' ', (study.Plan?.Order ?? []).Select((place, i) => i == at ? $"[{place}]" : $"{place}"));
    }
}
