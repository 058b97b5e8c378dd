using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>What the next trial of a set is, in words for the one who presents it.</summary>
public static class Presenting
{
    /// <summary>"trial 3 of 10: first 862, then 417", or that the set is at its planned end.</summary>
    public static string InWords(ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (set.IsComplete)
        {
            return RatingWords.AllTrialsAreMade(set);
        }

        IEnumerable<string> codes = Enumerable.Range(1, set.Terms.Places).Select(place => set.CodeAt(set.NextTrial, place).Digits);
        return RatingWords.NextTrialPresents(set, string.Join(", then ", codes));
    }
}
