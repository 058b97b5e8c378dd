namespace FieldSession.Measures;

/// <summary>
/// What a leg took out of the battery or the tank, kept as it was typed; greater than 0 and at most 2,000 kWh or litres.
/// Fuel is an energy carrier like electricity: it is calculated in litres, never turned into kWh.
/// </summary>
/// <param name="Amount">The figure, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit it was typed in.</param>
public readonly record struct Energy(double Amount, EnergyUnit Unit)
{
    /// <summary>Litres in a US gallon of 231 cubic inches, exact with the inch of 25.4 mm (international yard and pound agreement, 1959).</summary>
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
    public static double KwhOrLitresPer(EnergyUnit unit) => unit switch
    {
        EnergyUnit.UsGallon => LitresPerUsGallon,
        EnergyUnit.ImperialGallon => LitresPerImperialGallon,
        _ => 1,
    };

    /// <summary>The energy as it was typed, such as "38 kWh" or "4.2 US gal".</summary>
    public override string ToString() => $"{Amount:0.###} {Word}";

    private string Word => Unit switch
    {
        EnergyUnit.KilowattHour => "kWh",
        EnergyUnit.Litre => "l",
        EnergyUnit.UsGallon => "US gal",
        _ => "imp gal",
    };
}
