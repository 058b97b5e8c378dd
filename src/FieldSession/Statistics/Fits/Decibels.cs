namespace FieldSession.Statistics;

/// <summary>
/// Sums and means of levels by energy: 10 lg sum 10^(L/10) (ISO 1996-1; any textbook of acoustics).
/// Worked example: 62 dB and 73 dB together are 73.3 dB (www.10db.co.uk, decibel maths).
/// </summary>
public static class Decibels
{
    /// <summary>The level of all sources together, dB; one level or more.</summary>
    public static double Sum(ReadOnlySpan<double> levelsDb)
    {
        double energy = 0;
        foreach (double level in levelsDb)
        {
            energy += Math.Pow(10, level / 10);
        }

        return 10 * Math.Log10(energy);
    }

    /// <summary>The steady level with the same energy, dB, weighted by time (or length at one speed).</summary>
    /// <param name="levelsDb">The levels, dB.</param>
    /// <param name="weights">As many weights, none below 0, sum above 0.</param>
    public static double EnergyMean(ReadOnlySpan<double> levelsDb, ReadOnlySpan<double> weights)
    {
        double energy = 0;
        double weight = 0;
        for (int i = 0; i < levelsDb.Length; i++)
        {
            energy += weights[i] * Math.Pow(10, levelsDb[i] / 10);
            weight += weights[i];
        }

        return 10 * Math.Log10(energy / weight);
    }
}
