using FieldSession.Journal;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>What the screen of the energy days says.</summary>
internal static class LegsScreenWords
{
    public const string NumberOfEnergyDay = "number of the energy day";
    public const string CodeOnIt = "the code on it";
    public const string WhoDroveEmptyNotNoted = "who drove; empty: not noted";
    public const string MeanSpeedMph = "mean speed, mph";
    public const string WhenItBegan = "when it began, such as 09:10";
    public const string KwhByMeter = "kWh by the meter (38.0), or fuel (13.2l, 3.5gal)";
    public const string KwhByMeterCharge = "kWh by the meter (38.0), charge from-to in % (80-31), or fuel (13.2l, 3.5gal)";
    public const string AtStopOnly = "at a stop only ";
    public const string NoLegYet = " no leg yet";

    public static string AirAtStart(string degrees) => $"air at the start, {degrees}";

    public static string AirAtEnd(string degrees) => $"air at the end, {degrees}";

    public static string IsNoAmount(LegField field) => $"'{field.Value}' is no amount";

    public static string AndEnterAloneTakes(LegField field) => $"; Enter alone takes {field.Value}";

    public static string NotSavedMakeRoomThenEnter(Outcome outcome) => $"not saved: {outcome.NotSavedBecause}; make room, then Enter tries again";
}
