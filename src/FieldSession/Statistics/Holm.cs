namespace FieldSession.Statistics;

/// <summary>
/// Holm's step-down correction for several tests at once (S. Holm, Scandinavian Journal of Statistics 6, 1979):
/// p sorted ascending, adjusted p(i) = max over j up to i of min(1, (m - j + 1) p(j)).
/// Worked example: 0.01, 0.04, 0.03 become 0.03, 0.06, 0.06.
/// </summary>
public static class Holm
{
    /// <summary>The adjusted p in the order given.</summary>
    public static double[] Adjust(ReadOnlySpan<double> p)
    {
        double[] sorted = p.ToArray();
        int[] place = new int[p.Length];
        for (int i = 0; i < place.Length; i++)
        {
            place[i] = i;
        }

        Array.Sort(sorted, place);
        double[] adjusted = new double[p.Length];
        double highest = 0;
        for (int j = 0; j < sorted.Length; j++)
        {
            highest = Math.Max(highest, Math.Min(1, (sorted.Length - j) * sorted[j]));
            adjusted[place[j]] = highest;
        }

        return adjusted;
    }
}
