using FieldSession.Checking;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>Where the evening goes on: the screen that is due, and in words the key that leads there.</summary>
internal static class NextStep
{
    /// <summary>The name of the screen that is due.</summary>
    public static string Screen(Study study) => study switch
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

    private static string Act(string screen) => screen switch
    {
        ScreenName.Report => "the report",
        ScreenName.Reveal => ShellWords.OpenTheKey,
        ScreenName.Predict => ShellWords.LockThePredictions,
        ScreenName.Review => ShellWords.GoToBlindReview,
        _ => ShellWords.GoBackToDriving,
    };
}
