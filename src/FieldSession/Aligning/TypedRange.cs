namespace FieldSession.Aligning;

/// <summary>A reading as it was typed, and when it was stored.</summary>
/// <param name="StoredS">When it was stored, s on the laptop's clock.</param>
/// <param name="LowDb">Lowest level typed, dB(A).</param>
/// <param name="HighDb">Highest level typed, dB(A).</param>
public readonly record struct TypedRange(double StoredS, double LowDb, double HighDb)
{
    /// <summary>The middle of the range, dB(A).</summary>
    public double MiddleDb => (LowDb + HighDb) / 2;
}
