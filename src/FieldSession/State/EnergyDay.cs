using System.Collections.Immutable;

namespace FieldSession.State;

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
