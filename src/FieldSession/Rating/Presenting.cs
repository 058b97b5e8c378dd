using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Which trial of a set comes next, in words that everybody may read.</summary>
public static class Presenting
{
    /// <summary>"trial 3 of 10: answer first or second", with the codes only in a set of an older program; or that the set is at its planned end.</summary>
    public static string InWords(ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (set.IsComplete)
        {
            return RatingWords.AllTrialsAreMade(set);
        }

        if (set.IsFromRecordings)
        {
            return RatingWords.NextTrialIsPlayed(set);
        }

        if (set.IsSealed)
        {
            return RatingWords.NextTrialIs(set);
        }

        IEnumerable<string> codes = Enumerable.Range(1, set.Terms.Places).Select(place => set.CodeAt(set.NextTrial, place).Digits);
        return RatingWords.NextTrialPresents(set, string.Join(", then ", codes));
    }
}
