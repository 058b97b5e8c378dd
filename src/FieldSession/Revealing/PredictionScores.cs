using FieldSession.Predicting;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Revealing;

/// <summary>One prediction, held against the key.</summary>
/// <param name="Hit">Whether the code that was named meant a candidate.</param>
/// <param name="Chance">The chance of a blind hit.</param>
/// <param name="Stated">The probability that was stated.</param>
public sealed record ScoredPrediction(bool Hit, double Chance, double Stated);

/// <summary>
/// Predictions scored at the reveal: hits against chance, exactly, and the Brier score of what was stated. "Named as the new spec"
/// means: is a candidate, any spec but the control. Predictions of several studies can be scored together; people of one
/// car are not independent, so that the probability is a description.
/// </summary>
/// <param name="Count">Predictions.</param>
/// <param name="Hits">Of these, right ones.</param>
/// <param name="ExpectedHits">Hits that blind guessing gives on average.</param>
/// <param name="PAtLeast">Probability of at least so many hits by blind guessing.</param>
/// <param name="PAllRight">Probability that blind guessing is right throughout: the least that so many predictions can come to.</param>
/// <param name="Brier">Mean of (stated - outcome)^2: 0 best, 1 worst.</param>
/// <param name="BrierOfChance">What stating the chance throughout would have scored on these outcomes.</param>
public sealed record PredictionScores(
    int Count,
    int Hits,
    double ExpectedHits,
    double PAtLeast,
    double PAllRight,
    double Brier,
    double BrierOfChance
)
{
    /// <summary>
    /// The predictions of a study, scored; empty while the key is closed, does not tell the control, or does not agree with commitment and
    /// marks.
    /// </summary>
    public static IEnumerable<ScoredPrediction> In(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (key is not { NamesAllowed: true } || study.Plan is not { } plan)
        {
            yield break;
        }

        foreach (Prediction prediction in study.Predictions)
        {
            if (key.IsControl(prediction.Feature) is { } isControl)
            {
                yield return new ScoredPrediction(
                    !isControl,
                    PredictionScale.Chance(plan.SpecCount),
                    PredictionScale.Stated(prediction, plan.SpecCount)
                );
            }
        }
    }

    /// <summary>The score of predictions, of one study or of several; null of none.</summary>
    public static PredictionScores? Of(IEnumerable<ScoredPrediction> predictions)
    {
        ScoredPrediction[] all = [.. predictions];
        if (all.Length == 0)
        {
            return null;
        }

        int hits = all.Count(one => one.Hit);
        return new PredictionScores(
            all.Length,
            hits,
            all.Sum(one => one.Chance),
            UnevenTrials.PAtLeast(hits, [.. all.Select(one => one.Chance)]),
            UnevenTrials.PAtLeast(all.Length, [.. all.Select(one => one.Chance)]),
            Statistics.Brier.Of([.. all.Select(one => (one.Stated, one.Hit))])!.Value.Score,
            Statistics.Brier.Of([.. all.Select(one => (one.Chance, one.Hit))])!.Value.Score
        );
    }
}
