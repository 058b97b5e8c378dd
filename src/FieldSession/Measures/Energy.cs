using System.Globalization;

namespace FieldSession.Measures;

/// <summary>
/// What a leg took out of the battery or the tank, kept as it was typed; greater than 0 and at most 2,000 kWh or litres.
/// Fuel is an energy carrier like electricity: it is calculated in litres, never turned into kWh.
/// </summary>
/// <param name="Amount">The figure, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit it was typed in.</param>
public readonly record struct Energy(double Amount, EnergyUnit Unit)
{
    /// <summary>
    /// Litres in a US gallon of 231 cubic inches, exact with the inch of 25.4 mm (international yard and pound agreement, 1959).
    /// </summary>
    public const double LitresPerUsGallon = 3.785411784;

    /// <summary>Litres in an imperial gallon, exact by definition (from memory: Units of Measurement Regulations 1995).</summary>
    public const double LitresPerImperialGallon = 4.54609;

    /// <summary>The largest amount that is taken, kWh or litres: beyond any car.</summary>
    public const double Largest = 2000;

    /// <summary>An energy in a unit.</summary>
    /// <exception cref="QuantityOutOfRangeException">Not greater than 0, or beyond any car.</exception>
    public static Energy Of(double amount, EnergyUnit unit)
    {
        Energy energy = new(amount, unit);
        return energy.KwhOrLitres is > 0 and <= Largest
            ? energy
            : throw new QuantityOutOfRangeException(nameof(amount), MeasuresWords.RangeOfEnergy(Largest));
    }

    /// <summary>What it is an amount of.</summary>
    public EnergyCarrier Carrier => Unit == EnergyUnit.KilowattHour ? EnergyCarrier.Electricity : EnergyCarrier.Fuel;

    /// <summary>The amount in the carrier's own unit: kWh of electricity, litres of fuel.</summary>
    public double KwhOrLitres => Amount * KwhOrLitresPer(Unit);

    /// <summary>kWh or litres in one of a unit.</summary>
    public static double KwhOrLitresPer(EnergyUnit unit) =>
        unit switch
        {
            EnergyUnit.UsGallon => LitresPerUsGallon,
            EnergyUnit.ImperialGallon => LitresPerImperialGallon,
            _ => 1,
        };

    /// <summary>The energy as it was typed, such as "38 kWh" or "4.2 US gal".</summary>
    public override string ToString() => $"{Amount:0.###} {Word}";

    private string Word =>
        Unit switch
        {
            EnergyUnit.KilowattHour => "kWh",
            EnergyUnit.Litre => "l",
            EnergyUnit.UsGallon => "US gal",
            _ => "imp gal",
        };
}

/// <summary>The unit in which an energy was typed.</summary>
public enum EnergyUnit
{
    /// <summary>Kilowatt-hours of electricity.</summary>
    KilowattHour,

    /// <summary>Litres of fuel.</summary>
    Litre,

    /// <summary>US gallons of fuel.</summary>
    UsGallon,

    /// <summary>Imperial gallons of fuel.</summary>
    ImperialGallon,
}

/// <summary>What a car is driven by. Days on different carriers are never compared.</summary>
public enum EnergyCarrier
{
    /// <summary>Electricity, calculated in kWh.</summary>
    Electricity,

    /// <summary>Liquid fuel, calculated in litres.</summary>
    Fuel,
}

/// <summary>What the car's display says is left in the battery, in percent of its usable capacity; 0..100.</summary>
/// <param name="Percent">Percent.</param>
public readonly record struct StateOfCharge(double Percent)
{
    /// <summary>A state of charge in percent.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside 0..100 %.</exception>
    public static StateOfCharge FromPercent(double percent) =>
        percent is >= 0 and <= 100
            ? new StateOfCharge(percent)
            : throw new QuantityOutOfRangeException(nameof(percent), MeasuresWords.RangeOfCharge);
}

/// <summary>A state of charge read before and after a leg.</summary>
/// <param name="Start">At the start.</param>
/// <param name="End">At the end; below the start.</param>
/// <param name="StepPercent">The display's step, percent: 1 on most cars.</param>
public readonly record struct ChargeUsed(StateOfCharge Start, StateOfCharge End, double StepPercent)
{
    /// <summary>How much was used, percent of the usable capacity.</summary>
    public double Percent => Start.Percent - End.Percent;

    /// <summary>
    /// Standard uncertainty of <see cref="Percent"/>: two readings, each anywhere within a step with equal chance, step / sqrt(12) apiece
    /// (JCGM 100:2008, GUM, 4.3.7). Steps of 1 %: 0.41 %.
    /// </summary>
    public double UncertaintyPercent => StepPercent * Math.Sqrt(2.0 / 12);

    /// <summary>The energy that it means.</summary>
    /// <param name="usable">Usable capacity of the battery.</param>
    public Energy Of(Energy usable) => Energy.Of(usable.Amount * Percent / 100, usable.Unit);
}

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
    public static Consumption Of(double kwhOrLitres, double distanceKm, EnergyCarrier carrier) =>
        kwhOrLitres > 0 && distanceKm > 0
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
    public string In(UnitSystem units) =>
        (Carrier, units) switch
        {
            (EnergyCarrier.Electricity, UnitSystem.Metric) => Text(PerHundredKm, "0.00", "kWh/100 km"),
            (EnergyCarrier.Electricity, _) => Text(MilesPerKilowattHour, "0.000", "mi/kWh"),
            (_, UnitSystem.Metric) => Text(PerHundredKm, "0.00", "l/100 km"),
            _ => Text(MilesPerUsGallon, "0.0", "mpg (US)"),
        };

    private static string Text(double number, string format, string unit) =>
        $"{number.ToString(format, CultureInfo.CurrentCulture)} {unit}";
}
