using System.Collections.Immutable;
using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>What the plan decides of the energy days. Defaults are common practice, no source.</summary>
public sealed record EnergyPlan
{
    /// <summary>Largest difference of consumption that does not matter, percent.</summary>
    public double MarginPercent { get; init; } = 2;

    /// <summary>Usable capacity of the cars' battery or tank; null: not told.</summary>
    public Energy? Usable { get; init; }

    /// <summary>The planned days, with the swaps of tyres between cars; empty: none planned.</summary>
    public ImmutableList<EnergyDay> Days { get; init; } = [];

    /// <summary>Shortest way of one car on one code and day without a warning, km.</summary>
    public double DistanceShortKm { get; init; } = 100;

    /// <summary>Least state of charge used, where the energy comes from it, without a warning, percent.</summary>
    public double ChargeLeastPercent { get; init; } = 40;

    /// <summary>Lowest consumption that is believed without asking, kWh or litres per 100 km.</summary>
    public double ConsumptionLowest { get; init; } = 2;

    /// <summary>Highest consumption that is believed without asking, kWh or litres per 100 km.</summary>
    public double ConsumptionHighest { get; init; } = 60;

    /// <summary>The planned day of a number; null: none.</summary>
    public EnergyDay? Day(int number) => number >= 1 && number <= Days.Count ? Days[number - 1] : null;
}

/// <summary>A planned energy day: which place of the order each car carries. Cars of one day are driven together.</summary>
/// <param name="Fits">The cars of the day, each with its place.</param>
public sealed record EnergyDay(ImmutableList<CarFit> Fits)
{
    /// <summary>The place that a car is to carry; null: the car is not planned for this day.</summary>
    public Place? On(string car)
    {
        foreach (CarFit fit in Fits)
        {
            if (CrewMember.SamePerson(fit.Car, car))
            {
                return fit.Place;
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', Fits.Select(fit => $"{fit.Car}={fit.Place}"));
}

/// <summary>A car with the place whose tyres it carries.</summary>
/// <param name="Car">The car, as the crew calls it.</param>
/// <param name="Place">The place of the order.</param>
public sealed record CarFit(string Car, Place Place);
