namespace FieldSession.Measures;

/// <summary>A temperature of air or road, held in degrees Celsius; -60..90 degC is what a road can see.</summary>
/// <param name="Celsius">Degrees Celsius.</param>
public readonly record struct Temperature(double Celsius)
{
    /// <summary>A temperature in degrees Celsius.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside -60..90 degC.</exception>
    public static Temperature FromCelsius(double celsius) => celsius is >= -60 and <= 90
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
