namespace FieldSession.Measures;

/// <summary>A driving speed, held in km/h; greater than 0 and at most 300 km/h.</summary>
/// <param name="Kmh">Kilometres per hour.</param>
public readonly record struct Speed(double Kmh)
{
    /// <summary>Kilometres in one international mile, exact by definition (international yard and pound agreement, 1959).</summary>
    public const double KmPerMile = 1.609344;

    /// <summary>Highest speed a plan may name, km/h; a public road allows far less.</summary>
    public const double HighestKmh = 300;

    /// <summary>A speed in kilometres per hour.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not in 0..300 km/h, or 0.</exception>
    public static Speed FromKmh(double kmh) => kmh is > 0 and <= HighestKmh
        ? new Speed(kmh)
        : throw new QuantityOutOfRangeException(nameof(kmh), MeasuresWords.RangeOfSpeed);

    /// <summary>A speed in miles per hour.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not in 0..300 km/h, or 0.</exception>
    public static Speed FromMph(double mph) => FromKmh(mph * KmPerMile);

    /// <summary>Miles per hour.</summary>
    public double Mph => Kmh / KmPerMile;

    /// <summary>The speed in the crew's unit, such as "80 km/h" or "45 mph".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Mph:0.#} mph" : $"{Kmh:0.#} km/h";
}
