namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>What the screen of the energy days says.</summary>
internal static class LegsScreenWords
{
    public const string DayField = "number of the energy day";
    public const string CodeField = "the code on it";
    public const string DriverField = "who drove; empty: not noted";
    public const string SpeedInMphField = "mean speed, mph";
    public const string BeginField = "when it began, such as 09:10";
    public const string EnergyFieldWithoutCharge = "kWh by the meter (38.0), or fuel (13.2l, 3.5gal)";
    public const string EnergyField = "kWh by the meter (38.0), charge from-to in % (80-31), or fuel (13.2l, 3.5gal)";
    public const string AtStopOnly = "at a stop only ";
    public const string NoLegYet = " no leg yet";

    public static string AirAtStartField(string unit) => $"air at the start, {unit}";

    public static string AirAtEndField(string unit) => $"air at the end, {unit}";

    public static string NoAmount(string typed) => $"'{typed}' is not an amount";

    public static string EnterTakes(string value) => $"; Enter alone takes {value}";
}
