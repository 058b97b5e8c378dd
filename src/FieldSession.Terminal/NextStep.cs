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
        { Opening: not null } => KeyTable.Report,
        { IsAnythingDriven: true } when KeyGate.ObjectionIn(study) is null => KeyTable.Reveal,
        { Predictions.Count: > 0 } => KeyTable.Predict,
        { OrderDriven: true } when RunChecks.AgainstPredicting(study) is null => KeyTable.Review,
        _ => KeyTable.Drive,
    };

    /// <summary>What to do next, for somebody who is on a screen already.</summary>
    /// <param name="study">The study.</param>
    /// <param name="keys">The keys.</param>
    /// <param name="here">The screen's name.</param>
    public static string Words(Study study, KeyTable keys, string here)
    {
        string due = Screen(study) == KeyTable.Review && here == KeyTable.Review ? KeyTable.Predict : Screen(study);
        return due == here ? "" : $"{keys.KeyTo(due)}: {Act(due)}";
    }

    private static string Act(string screen) => screen switch
    {
        KeyTable.Report => "the report",
        KeyTable.Reveal => ShellWords.OpenTheKey,
        KeyTable.Predict => ShellWords.LockThePredictions,
        KeyTable.Review => ShellWords.GoToBlindReview,
        _ => ShellWords.GoBackToDriving,
    };
}
