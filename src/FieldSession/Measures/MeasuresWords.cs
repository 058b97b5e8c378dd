namespace FieldSession.Measures;

/// <summary>In which range each quantity lies.</summary>
internal static class MeasuresWords
{
    public const string RangeOfTemperature = "a temperature lies in -60..90 degC";
    public const string RangeOfWindSpeed = "a wind speed lies in 0..60 m/s";
    public const string RangeOfSpeed = "a speed is greater than 0 and at most 300 km/h";
    public const string RangeOfDistance = "a distance is greater than 0 and at most 1000 km";
    public const string RangeOfCharge = "a state of charge lies in 0..100 %";

    public static string RangeOfEnergy(double largest) => $"an energy is greater than 0 and at most {largest} kWh or litres";
}
