using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Planning;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>Where the evening goes on: the screen that is due, and in words the key that leads there.</summary>
internal static class NextStep
{
    /// <summary>The name of the screen that is due.</summary>
    public static string Screen(Study study) =>
        study switch
        {
            { Opening: not null } => ScreenName.Report,
            { IsAnythingDriven: true } when KeyGate.ObjectionIn(study) is null => ScreenName.Reveal,
            { Predictions.Count: > 0 } => ScreenName.Predict,
            { OrderDriven: true } when RunChecks.AgainstPredicting(study) is null => ScreenName.Review,
            _ => ScreenName.Drive,
        };

    /// <summary>What to do next, for somebody who is on a screen already.</summary>
    /// <param name="study">The study.</param>
    /// <param name="keys">The keys.</param>
    /// <param name="here">The screen's name.</param>
    public static string Words(Study study, KeyTable keys, string here)
    {
        string due = Screen(study) == ScreenName.Review && here == ScreenName.Review ? ScreenName.Predict : Screen(study);
        return due == here ? "" : $"{keys.KeyTo(due)}: {Act(due)}";
    }

    private static string Act(string screen) =>
        screen switch
        {
            ScreenName.Report => "the report",
            ScreenName.Reveal => ShellWords.OpenTheKey,
            ScreenName.Predict => ShellWords.LockThePredictions,
            ScreenName.Review => ShellWords.GoToBlindReview,
            _ => ShellWords.GoBackToDriving,
        };
}

/// <summary>
/// The order of a further day, where what is missing asks for one: it follows from the order and from what was driven, never from a result.
/// </summary>
internal static class NextDay
{
    /// <summary>What to type so that the order grows by a day; null: nothing asks for one.</summary>
    public static string? Line(Study study) =>
        StillMissing.WantsAnotherDay(study)
            ? PlanEditingWords.HowToAddADay(string.Join(' ', study.Plan!.Order), string.Join(' ', OrderOf(study)))
            : null;

    // every second day goes backwards
    private static ImmutableList<Place> OrderOf(Study study)
    {
        Plan plan = study.Plan!;
        Amendment[] grown = [.. study.Amendments.Where(amendment => amendment is { What: "order", OrderWasDriven: true })];
        ImmutableList<Place> first = grown.Length == 0 ? plan.Order : OrderText.Parse(grown[0].From, plan.SpecCount, out _) ?? plan.Order;
        return grown.Length % 2 == 0 ? OrderProposals.NextDay(first) : first;
    }
}
