namespace FieldSession.Measures;

/// <summary>
/// What the meter showed while a segment was driven: the lowest and the highest sound level in dB(A), or one value
/// twice where a single peak was read. Levels lie in 0..140 dB, the span of a handheld meter; 0.1 dB is the finest step.
/// </summary>
/// <param name="LowDb">Lowest level seen, dB(A).</param>
/// <param name="HighDb">Highest level seen, dB(A); equal to <paramref name="LowDb"/> for a single value.</param>
public readonly record struct LevelRange(double LowDb, double HighDb)
{
    /// <summary>Lowest level the program stores, dB: below it no handheld meter shows anything.</summary>
    public const double LowestDb = 0;

    /// <summary>Highest level the program stores, dB: above it a handheld meter is overloaded (from memory).</summary>
    public const double HighestDb = 140;

    /// <summary>A range typed in either order, with the lower value first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside 0..140 dB or not a number.</exception>
    public static LevelRange FromDb(double oneEndDb, double otherEndDb)
    {
        if (!IsLevel(oneEndDb) || !IsLevel(otherEndDb))
        {
            throw new ArgumentOutOfRangeException(nameof(oneEndDb), "a level is between 0 and 140 dB");
        }

        return new LevelRange(Math.Min(oneEndDb, otherEndDb), Math.Max(oneEndDb, otherEndDb));
    }

    /// <summary>One value, such as the peak over an impact.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside 0..140 dB or not a number.</exception>
    public static LevelRange FromPeakDb(double peakDb) => FromDb(peakDb, peakDb);

    /// <summary>Whether a number can be a level at all: 0..140 dB.</summary>
    public static bool IsLevel(double levelDb) => levelDb is >= LowestDb and <= HighestDb;

    /// <summary>Midpoint of the range, dB: the level the comparison works with.</summary>
    public double MidpointDb => (LowDb + HighDb) / 2;

    /// <summary>Width of the range, dB: how much the meter flickered; 0 for a single value.</summary>
    public double WidthDb => HighDb - LowDb;

    /// <summary>Whether one value was read, not a range.</summary>
    public bool IsSingle => LowDb.Equals(HighDb);

    /// <summary>The range as the crew says it: "58-60", or "71.4" for one value.</summary>
    public override string ToString() => IsSingle ? Number(HighDb) : $"{Number(LowDb)}-{Number(HighDb)}";

    private static string Number(double levelDb) => $"{levelDb:0.##}";
}
