namespace FieldSession.Measures;

/// <summary>The units a crew types and reads in. Values are held in metric units either way.</summary>
public enum UnitSystem
{
    /// <summary>km/h, m, degC, m/s.</summary>
    Metric,

    /// <summary>mph, mi, degF, mph of wind.</summary>
    Imperial,
}

/// <summary>A quantity that can't be, such as a wind of 300 m/s.</summary>
/// <param name="quantity">The name of the quantity.</param>
/// <param name="why">The range it lies in, in words for the crew.</param>
public sealed class QuantityOutOfRangeException(string quantity, string why) : ArgumentOutOfRangeException(quantity, why)
{
    /// <summary>The range it lies in, in words for the crew.</summary>
    public string Why { get; } = why;
}

/// <summary>In which range each quantity lies.</summary>
internal static class MeasuresWords
{
    public const string RangeOfTemperature = "a temperature is between -60 and 90 degC";
    public const string RangeOfWindSpeed = "a wind speed is between 0 and 60 m/s";
    public const string RangeOfSpeed = "a speed is greater than 0 and at most 300 km/h";
    public const string RangeOfDistance = "a distance is greater than 0 and at most 1000 km";
    public const string RangeOfCharge = "a state of charge is between 0 and 100 %";

    public static string RangeOfEnergy(double largest) => $"an energy is greater than 0 and at most {largest} kWh or litres";
}
