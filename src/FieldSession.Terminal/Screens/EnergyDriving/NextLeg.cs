using System.Collections.Immutable;
using System.Globalization;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>What the next leg is likely to be; empty where nothing is likely.</summary>
/// <param name="Day">Number of the day.</param>
/// <param name="Car">The car.</param>
/// <param name="Code">The code on it.</param>
/// <param name="Driver">Who drives it.</param>
internal sealed record NextLeg(string Day, string Car, string Code, string Driver)
{
    /// <summary>The next leg of a study: of the last leg's day as long as the date stays, of the car that has fewer legs there.</summary>
    public static NextLeg In(Study study, DateOnly today)
    {
        int day = study.Legs.Count == 0 ? 1 : study.Legs[^1].Figures.Day + (DateOf(study.Legs[^1]) < today ? 1 : 0);
        ImmutableArray<string> cars = CarsOf(study, day);
        string car = cars.IsEmpty ? "" : cars.MinBy(c => study.Legs.Count(leg => leg.Figures.Day == day && CrewMember.SamePerson(leg.Figures.Car, c)))!;
        EnergyLeg? last = study.Legs.LastOrDefault(leg => CrewMember.SamePerson(leg.Figures.Car, car));
        SpecCode? code = Planned(study, day, car) ?? (last?.Figures.Day == day ? last.Figures.Code : null);
        return new NextLeg(day.ToString(CultureInfo.InvariantCulture), car, code?.Digits ?? "", last?.Figures.Driver ?? "");
    }

    private static DateOnly DateOf(EnergyLeg leg) => DateOnly.FromDateTime(leg.Mark.At.UtcDateTime);

    private static ImmutableArray<string> CarsOf(Study study, int day) => study.Plan?.Energy.Day(day) is { } planned
        ? [.. planned.Fits.Select(fit => fit.Car)]
        : [.. study.Legs.Select(leg => leg.Figures.Car).Distinct(StringComparer.OrdinalIgnoreCase)];

    private static SpecCode? Planned(Study study, int day, string car) =>
        study.Plan?.Energy.Day(day)?.On(car) is { } place ? study.Fitting?.At(place) : null;
}
