using System.Globalization;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

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

    /// <summary>What one study brings to a common score.</summary>
    /// <param name="name">The study's name.</param>
    /// <param name="study">Which study it is.</param>
    /// <param name="predictions">Its predictions.</param>
    /// <param name="copies">Other files that were named and are copies or earlier states of it.</param>
    public static string OfStudy(string name, StudyIdentity study, IReadOnlyCollection<ScoredPrediction> predictions, int copies)
    {
        ArgumentNullException.ThrowIfNull(predictions);
        string once = copies == 0 ? "" : $"; counted once, {copies} of the files {(copies == 1 ? "is a copy or an earlier state" : "are copies or earlier states")} of it";
        return $"{name} ({study.ShortHash}): {predictions.Count(one => one.Hit)} of {predictions.Count} right{once}";
    }

    /// <summary>Why a study is not scored: its key.</summary>
    public static string KeyIsNotOpen(string path) => $"{path}: the key is not open, or does not name the control; open it with 'reveal' first";

    /// <summary>Why a study is not scored: its copies.</summary>
    public static string WentOnDifferently(IReadOnlyList<string> paths) =>
        $"{string.Join(", ", paths)}: copies of one study that went on differently; not scored. Merge one into the other first: fieldsession merge {paths[0]} {paths[1]}";

    // The most that these predictions could have shown: every one right.
    private static bool CanBeUnlikely(PredictionScores scores) => scores.PAllRight <= Unlikely;

    private static string Number(double number) => number.ToString("0.##", CultureInfo.CurrentCulture);
}
