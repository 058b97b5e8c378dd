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
    public static Speed FromKmh(double kmh) =>
        kmh is > 0 and <= HighestKmh ? new Speed(kmh) : throw new QuantityOutOfRangeException(nameof(kmh), MeasuresWords.RangeOfSpeed);

    /// <summary>A speed in miles per hour.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not in 0..300 km/h, or 0.</exception>
    public static Speed FromMph(double mph) => FromKmh(mph * KmPerMile);

    /// <summary>Miles per hour.</summary>
    public double Mph => Kmh / KmPerMile;

    /// <summary>The speed in the crew's unit, such as "80 km/h" or "45 mph".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Mph:0.#} mph" : $"{Kmh:0.#} km/h";
}

/// <summary>A wind speed, held in metres per second; 0..60 m/s.</summary>
/// <param name="MetresPerSecond">Metres per second.</param>
public readonly record struct WindSpeed(double MetresPerSecond)
{
    private const double MetresPerSecondPerMph = Speed.KmPerMile / 3.6;

    /// <summary>A wind speed in metres per second.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside 0..60 m/s.</exception>
    public static WindSpeed FromMetresPerSecond(double metresPerSecond) =>
        metresPerSecond is >= 0 and <= 60
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

/// <summary>A length of road, held in metres; greater than 0.</summary>
/// <param name="Metres">Metres.</param>
public readonly record struct Distance(double Metres)
{
    /// <summary>A distance in metres.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not greater than 0, or more than 1,000 km.</exception>
    public static Distance FromMetres(double metres) =>
        metres is > 0 and <= 1e6
            ? new Distance(metres)
            : throw new QuantityOutOfRangeException(nameof(metres), MeasuresWords.RangeOfDistance);

    /// <summary>A distance in miles.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not greater than 0, or more than 1,000 km.</exception>
    public static Distance FromMiles(double miles) => FromMetres(miles * Speed.KmPerMile * 1000);

    /// <summary>A distance in kilometres.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not greater than 0, or more than 1,000 km.</exception>
    public static Distance FromKilometres(double kilometres) => FromMetres(kilometres * 1000);

    /// <summary>Kilometres.</summary>
    public double Kilometres => Metres / 1000;

    /// <summary>Miles.</summary>
    public double Miles => Metres / 1000 / Speed.KmPerMile;

    /// <summary>Seconds that the distance lasts at a speed.</summary>
    public double SecondsAt(Speed speed) => Metres / (speed.Kmh / 3.6);

    /// <summary>The distance in the crew's unit, such as "900 m" or "0.6 mi".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Miles:0.##} mi" : $"{Metres:0.#} m";

    /// <summary>A distance of the length of a day's leg in the crew's unit, such as "212.4 km" or "132 mi".</summary>
    public string OnTheRoadIn(UnitSystem units) => units == UnitSystem.Imperial ? $"{Miles:0.#} mi" : $"{Kilometres:0.#} km";
}
