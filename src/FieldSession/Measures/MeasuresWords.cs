namespace FieldSession.Measures;

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
