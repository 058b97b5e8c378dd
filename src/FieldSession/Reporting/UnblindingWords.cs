using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Reporting;

/// <summary>
/// Whether the blind held: each person said which code has the feature and why, before the key was opened. A right guess from the sound is a finding;
/// one from something seen is a leak. One guess a person counts; so few are a description, not a test.
/// </summary>
public static class UnblindingWords
{
    /// <summary>The paragraphs; none until every prediction is locked.</summary>
    public static IEnumerable<string> Of(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Predictions.Count == 0 || study.StillToPredict.Any())
        {
            yield break;
        }

        string[] seen = [.. study.Predictions.Where(p => p.Basis == PredictionBasis.Seen).Select(p => p.Person)];
        string blind = seen.Length > 0
            ? $"The blind did not hold for {string.Join(" and ", seen)}, who went by something seen or overheard: a leak."
            : "Nobody went by something seen or overheard.";
        if (key?.ControlCode is not { } control)
        {
            yield return $"Check of the blind: {blind} {(key is null ? "The key is not open" : "The key names no control")}: which guesses were right is not known.";
            yield break;
        }

        Prediction[] right = [.. study.Predictions.Where(p => p.Feature != control)];
        int codes = study.Codes.Count();
        double p = ForcedChoice.UpperTail(right.Length, study.Predictions.Count, (codes - 1.0) / codes);
        yield return $"Check of the blind: {right.Length} of {study.Predictions.Count} named a code of a new spec; guessing alone does as well with p {p:0.##}: a description, not a test. {blind}{Grounds(right)}";
    }

    private static string Grounds(Prediction[] right)
    {
        string[] heard = [.. right.Where(p => p.Basis == PredictionBasis.Sound).Select(p => p.Person)];
        string[] guessed = [.. right.Where(p => p.Basis == PredictionBasis.Guess).Select(p => p.Person)];
        return (heard.Length > 0 ? $" Right by the sound, which is a finding and no leak: {string.Join(" and ", heard)}." : "")
            + (guessed.Length > 0 ? $" Right without grounds: {string.Join(" and ", guessed)}." : "");
    }
}
