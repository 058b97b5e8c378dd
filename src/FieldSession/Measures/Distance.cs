namespace FieldSession.Measures;

/// <summary>A length of road, held in metres; greater than 0.</summary>
/// <param name="Metres">Metres.</param>
public readonly record struct Distance(double Metres)
{
    /// <summary>A distance in metres.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not greater than 0, or more than 1,000 km.</exception>
    public static Distance FromMetres(double metres) => metres is > 0 and <= 1e6
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
