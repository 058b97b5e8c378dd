using System.Globalization;

namespace FieldSession.Measures;

/// <summary>
/// Energy per distance, held per 100 km: the ratio of totals. Several legs are summed first and divided once; a mean of
/// consumptions or of mi/kWh is no consumption.
/// </summary>
/// <param name="PerHundredKm">kWh or litres per 100 km, greater than 0.</param>
/// <param name="Carrier">Electricity or fuel.</param>
public readonly record struct Consumption(double PerHundredKm, EnergyCarrier Carrier)
{
    /// <summary>The consumption of a total energy over a total distance.</summary>
    /// <param name="kwhOrLitres">kWh or litres in all.</param>
    /// <param name="distanceKm">Kilometres in all.</param>
    /// <param name="carrier">Electricity or fuel.</param>
    /// <exception cref="ArgumentOutOfRangeException">An amount or a distance is not greater than 0.</exception>
    public static Consumption Of(double kwhOrLitres, double distanceKm, EnergyCarrier carrier) => kwhOrLitres > 0 && distanceKm > 0
        ? new Consumption(100 * kwhOrLitres / distanceKm, carrier)
        : throw new ArgumentOutOfRangeException(nameof(kwhOrLitres), "energy and distance are greater than 0");

    /// <summary>The consumption of one energy over one distance.</summary>
    public static Consumption Of(Energy energy, Distance distance) => Of(energy.KwhOrLitres, distance.Kilometres, energy.Carrier);

    /// <summary>Watt-hours per mile; for electricity.</summary>
    public double WhPerMile => PerHundredKm * 10 * Speed.KmPerMile;

    /// <summary>Miles per kilowatt-hour; for electricity.</summary>
    public double MilesPerKilowattHour => 100 / Speed.KmPerMile / PerHundredKm;

    /// <summary>Miles per US gallon; for fuel.</summary>
    public double MilesPerUsGallon => 100 / Speed.KmPerMile / PerHundredKm * Energy.LitresPerUsGallon;

    /// <summary>Miles per imperial gallon; for fuel.</summary>
    public double MilesPerImperialGallon => 100 / Speed.KmPerMile / PerHundredKm * Energy.LitresPerImperialGallon;

    /// <summary>How far an amount carries, km.</summary>
    /// <param name="kwhOrLitres">kWh or litres.</param>
    public double KmOn(double kwhOrLitres) => 100 * kwhOrLitres / PerHundredKm;

    /// <summary>The consumption in the crew's unit: kWh/100 km or l/100 km; imperial mi/kWh or miles per US gallon.</summary>
    public string In(UnitSystem units) => (Carrier, units) switch
    {
        (EnergyCarrier.Electricity, UnitSystem.Metric) => Text(PerHundredKm, "0.00", "kWh/100 km"),
        (EnergyCarrier.Electricity, _) => Text(MilesPerKilowattHour, "0.000", "mi/kWh"),
        (_, UnitSystem.Metric) => Text(PerHundredKm, "0.00", "l/100 km"),
        _ => Text(MilesPerUsGallon, "0.0", "mpg (US)"),
    };

    private static string Text(double number, string format, string unit) => $"{number.ToString(format, CultureInfo.CurrentCulture)} {unit}";
}
