namespace FieldSession.Signals;

/// <summary>Levels of mean squares, 0 dB at mean square 1: a sine of full scale is -3.01 dB.</summary>
public static class Level
{
    /// <summary>10 lg of a mean square, dB; null for silence.</summary>
    public static double? OfMeanSquare(double meanSquare) => meanSquare > 0 ? 10 * Math.Log10(meanSquare) : null;
}
