namespace FieldSession.Journal;

/// <summary>Finds the known word that was probably meant.</summary>
public static class NearWord
{
    /// <summary>The nearest known word at one or two slips of the finger; null: none is near.</summary>
    public static string? Of(string word, IEnumerable<string> known) =>
        known
            .Select(candidate => (candidate, slips: Slips(word, candidate)))
            .Where(near => near.slips <= (near.candidate.Length < 5 ? 1 : 2))
            .OrderBy(near => near.slips)
            .Select(near => near.candidate)
            .FirstOrDefault();

    /// <summary>Letters to add, leave out, change or swap with their neighbour (Damerau 1964, each stretch repaired once).</summary>
    public static int Slips(string one, string other)
    {
        if (Math.Abs(one.Length - other.Length) > 2)
        {
            return int.MaxValue;
        }

        int[,] cost = new int[one.Length + 1, other.Length + 1];
        for (int i = 0; i <= one.Length; i++)
        {
            for (int j = 0; j <= other.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Cheapest(cost, one, other, i, j);
            }
        }

        return cost[one.Length, other.Length];
    }

    private static int Cheapest(int[,] cost, string one, string other, int i, int j)
    {
        int change = cost[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
        int cheapest = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        bool isSwap = i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
        return isSwap ? Math.Min(cheapest, cost[i - 2, j - 2] + 1) : cheapest;
    }
}
