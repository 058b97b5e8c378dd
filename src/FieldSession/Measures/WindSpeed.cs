namespace FieldSession.Measures;

/// <summary>A wind speed, held in metres per second; 0..60 m/s.</summary>
/// <param name="MetresPerSecond">Metres per second.</param>
public readonly record struct WindSpeed(double MetresPerSecond)
{
    private const double MetresPerSecondPerMph = Speed.KmPerMile / 3.6;

    /// <summary>A wind speed in metres per second.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside 0..60 m/s.</exception>
    public static WindSpeed FromMetresPerSecond(double metresPerSecond) => metresPerSecond is >= 0 and <= 60
        ? new WindSpeed(metresPerSecond)
        : throw new QuantityOutOfRangeException(nameof(metresPerSecond), MeasuresWords.RangeOfWindSpeed);

    /// <summary>A wind speed in miles per hour.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside 0..60 m/s.</exception>
    public static WindSpeed FromMph(double mph) => FromMetresPerSecond(mph * MetresPerSecondPerMph);

    /// <summary>Miles per hour.</summary>
    public double Mph => MetresPerSecond / MetresPerSecondPerMph;

    /// <summary>The wind in the crew's unit, such as "2.5 m/s" or "6 mph".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Mph:0.#} mph" : $"{MetresPerSecond:0.#} m/s";
}
