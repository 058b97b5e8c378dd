using System.Globalization;
using FieldSession.Revealing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>The score of predictions in plain words, with what it can say at all.</summary>
public static class ScoreWords
{
    /// <summary>A probability at or below which chance is called unlikely.</summary>
    public const double Unlikely = 0.05;

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(PredictionScores scores)
    {
        ArgumentNullException.ThrowIfNull(scores);
        yield return $"{scores.Hits} of {scores.Count} right. Blind guessing gives {Number(scores.ExpectedHits)} on average, and so many or more with probability {Figures.Probability(scores.PAtLeast)} (exact, as if each had guessed alone).";
        yield return CanBeUnlikely(scores)
            ? scores.PAtLeast <= Unlikely ? "Guessing alone would seldom come to this." : "Guessing alone would often come to this."
            : "So few predictions can't tell knowledge from luck, whatever they say: even if all were right, guessing would explain it.";
        yield return $"Brier score {Number(scores.Brier)} (0 best, 1 worst); stating the chance throughout would have scored {Number(scores.BrierOfChance)}.";
    }

    // The most that these predictions could have shown: every one right.
    private static bool CanBeUnlikely(PredictionScores scores) => scores.PAllRight <= Unlikely;

    private static string Number(double number) => number.ToString("0.##", CultureInfo.CurrentCulture);
}
