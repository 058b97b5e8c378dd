using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>The order of a set's trials as the one who runs them reads it, and nobody else.</summary>
public static class OrderSlip
{
    private const int TrialsInRow = 5;

    /// <summary>Whose it is and how it is read, then the trials, a few in a row: "1  862 417".</summary>
    /// <param name="set">The set.</param>
    /// <param name="fromTrial">Number of the first trial to show.</param>
    public static IEnumerable<string> Rows(ChoiceSet set, int fromTrial)
    {
        ArgumentNullException.ThrowIfNull(set);
        yield return RatingWords.SlipHead(set);
        yield return RatingWords.SlipIsForRunnerAlone;
        foreach (int[] row in Enumerable.Range(1, set.Presentations.Count).Skip(fromTrial - 1).Chunk(set.Terms.Places == 2 ? TrialsInRow : TrialsInRow - 1))
        {
            yield return string.Join("   ", row.Select(trial =>
                $"{trial,3}  {string.Join(' ', Enumerable.Range(1, set.Terms.Places).Select(place => set.CodeAt(trial, place)))}"));
        }
    }
}
