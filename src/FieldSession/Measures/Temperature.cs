namespace FieldSession.Measures;

/// <summary>A temperature of air or road, held in degrees Celsius; -60..90 degC is what a road can see.</summary>
/// <param name="Celsius">Degrees Celsius.</param>
public readonly record struct Temperature(double Celsius)
{
    /// <summary>A temperature in degrees Celsius.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside -60..90 degC.</exception>
    public static Temperature FromCelsius(double celsius) =>
        celsius is >= -60 and <= 90
            ? new Temperature(celsius)
            : throw new QuantityOutOfRangeException(nameof(celsius), MeasuresWords.RangeOfTemperature);

    /// <summary>A temperature in degrees Fahrenheit.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside -60..90 degC.</exception>
    public static Temperature FromFahrenheit(double fahrenheit) => FromCelsius((fahrenheit - 32) / 1.8);

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => (Celsius * 1.8) + 32;

    /// <summary>The temperature in the crew's unit, such as "6.1 degC" or "58 degF".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Fahrenheit:0.#} degF" : $"{Celsius:0.#} degC";
}

/// <summary>
/// A tyre's pressure above that of the air, held in kPa. At constant volume the absolute pressure is proportional to the
/// absolute temperature (Gay-Lussac's law), so pressures are compared at one temperature.
/// </summary>
/// <param name="Kpa">Kilopascals above the air's pressure.</param>
public readonly record struct TyrePressure(double Kpa)
{
    /// <summary>Standard pressure of the air, kPa (exact by definition: standard atmosphere).</summary>
    public const double AirKpa = 101.325;

    /// <summary>Kilopascals in one pound-force per square inch (0.45359237 kg x 9.80665 m/s2 / (0.0254 m)2).</summary>
    public const double KpaPerPsi = 6.894757;

    /// <summary>Temperature at which cold pressures are compared, degC.</summary>
    public const double ReferenceCelsius = 20;

    private const double ZeroCelsius = 273.15;

    /// <summary>A pressure in pounds per square inch.</summary>
    public static TyrePressure FromPsi(double psi) => new(psi * KpaPerPsi);

    /// <summary>Pounds per square inch.</summary>
    public double Psi => Kpa / KpaPerPsi;

    /// <summary>What the same air shows at another temperature.</summary>
    /// <param name="from">Temperature at which this pressure was read.</param>
    /// <param name="to">The other temperature.</param>
    public TyrePressure At(Temperature from, Temperature to) =>
        new(((Kpa + AirKpa) * (to.Celsius + ZeroCelsius) / (from.Celsius + ZeroCelsius)) - AirKpa);

    /// <summary>The pressure in the crew's unit, such as "230 kPa" or "33.4 psi".</summary>
    public string In(UnitSystem units) => units == UnitSystem.Imperial ? $"{Psi:0.0} psi" : $"{Kpa:0.#} kPa";
}
