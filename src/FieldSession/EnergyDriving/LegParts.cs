using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>One part of a leg, such as km=212.4: how it is named in a line, and how its value is read.</summary>
/// <param name="Name">Its name in an entry line.</param>
/// <param name="Allowed">What its value may be.</param>
/// <param name="Read">The draft with the value; null: the value is none. A value outside its range throws
/// <see cref="QuantityOutOfRangeException"/>.</param>
public sealed record LegPart(string Name, string Allowed, Func<LegDraft, string, UnitSystem, LegDraft?> Read);

/// <summary>Every part that a leg can have, in the order in which help and documents name them.</summary>
public static class LegParts
{
    /// <summary>Longest name of a car or a driver, in characters.</summary>
    public const int LongestName = 40;

    /// <summary>The parts.</summary>
    public static ImmutableArray<LegPart> All { get; } =
    [
        new("day", EnergyDrivingWords.WholeNumberFromOne, (leg, text, _) => Typed.Count(text) is { } day ? leg with { Day = day } : null),
        new("car", EnergyDrivingWords.NameWithinLength, (leg, text, _) => IsName(text) ? leg with { Car = text } : null),
        new("code", "a three-digit code", (leg, text, _) => SpecCode.Parse(text) is { } code ? leg with { Code = code } : null),
        new("driver", EnergyDrivingWords.NameWithinLength, (leg, text, _) => IsName(text) ? leg with { Driver = text } : null),
        Number("km", EnergyDrivingWords.KilometresWithinLimits, (leg, km) => leg with { Distance = Distance.FromKilometres(km) }),
        Number("mi", EnergyDrivingWords.MilesWithinLimits, (leg, miles) => leg with { Distance = Distance.FromMiles(miles) }),
        Amount("kwh", EnergyUnit.KilowattHour),
        Amount("l", EnergyUnit.Litre),
        Amount("gal", EnergyUnit.UsGallon),
        Amount("impgal", EnergyUnit.ImperialGallon),
        Number(
            "read",
            EnergyDrivingWords.StepOfEnergyDisplay,
            (leg, step) => step is > 0 and <= 10 ? leg with { EnergyStepSaid = step } : null
        ),
        new("soc", EnergyDrivingWords.PercentAtStartAndEnd, (leg, text, _) => Charge(leg, text)),
        Number(
            "step",
            EnergyDrivingWords.StepOfChargeDisplay,
            (leg, step) => step is > 0 and <= 10 ? leg with { ChargeStep = step } : null
        ),
        Number(
            "usable",
            EnergyDrivingWords.UsableCapacityInKwh,
            (leg, kwh) => leg with { Usable = Energy.Of(kwh, EnergyUnit.KilowattHour) }
        ),
        Number("tank", EnergyDrivingWords.UsableLitresOfTank, (leg, litres) => leg with { Usable = Energy.Of(litres, EnergyUnit.Litre) }),
        new("t0", EnergyDrivingWords.AirAtStart, (leg, text, units) => Air(text, units) is { } air ? leg with { AirAtStart = air } : null),
        new("t1", EnergyDrivingWords.AirAtEnd, (leg, text, units) => Air(text, units) is { } air ? leg with { AirAtEnd = air } : null),
        new(
            "wind",
            EnergyDrivingWords.MeanWindInUnits,
            (leg, text, units) => Blowing(text, units) is { } wind ? leg with { Wind = wind } : null
        ),
        Number("kmh", EnergyDrivingWords.MeanSpeedInKmh, (leg, kmh) => leg with { MeanSpeed = Speed.FromKmh(kmh) }),
        Number("mph", EnergyDrivingWords.MeanSpeedInMph, (leg, mph) => leg with { MeanSpeed = Speed.FromMph(mph) }),
        new("at", EnergyDrivingWords.TimeItBegan, (leg, text, _) => Clock(text) is { } at ? leg with { At = at } : null),
        Number(
            "min",
            EnergyDrivingWords.MinutesItTook,
            (leg, minutes) => minutes is > 0 and <= 1440 ? leg with { Minutes = minutes } : null
        ),
    ];

    /// <summary>The part of a name in an entry line; null: none.</summary>
    public static LegPart? Named(string name) => All.FirstOrDefault(part => Typed.Is(name, part.Name));

    /// <summary>The draft with one more part, or what is wrong with its value.</summary>
    public static (LegDraft Draft, string? Wrong) With(LegDraft draft, LegPart part, string value, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(part);
        try
        {
            return part.Read(draft, value, units) is { } next ? (next, null) : (draft, $"'{value}' can't be {part.Name}: {part.Allowed}");
        }
        catch (QuantityOutOfRangeException absurd)
        {
            return (draft, $"{part.Name}={value} can't be: {absurd.Why}");
        }
    }

    private static LegPart Number(string name, string allowed, Func<LegDraft, double, LegDraft?> with) =>
        new(name, allowed, (leg, text, _) => Typed.Number(text) is { } number ? with(leg, number) : null);

    private static LegPart Amount(string name, EnergyUnit unit) =>
        new(
            name,
            EnergyDrivingWords.AmountAboveZero,
            (leg, text, _) =>
                Typed.Number(text) is { } amount ? leg with { Energy = Energy.Of(amount, unit), EnergyStep = StepOf(text) } : null
        );

    private static bool IsName(string text) => text.Length is > 0 and <= LongestName && !text.Contains('=', StringComparison.Ordinal);

    // 38.0 was read to a tenth, 38 to a whole one.
    private static double StepOf(string text)
    {
        int point = text.IndexOfAny(['.', ',']);
        return point < 0 ? 1 : Math.Pow(10, point + 1 - text.Length);
    }

    private static LegDraft? Charge(LegDraft leg, string text)
    {
        string[] ends = text.Split('-');
        return ends.Length == 2 && Typed.Number(ends[0]) is { } start && Typed.Number(ends[1]) is { } end
            ? leg with
            {
                ChargeAtStart = StateOfCharge.FromPercent(start),
                ChargeAtEnd = StateOfCharge.FromPercent(end),
                ChargeIsFine = ends.Any(one => StepOf(one) < 1),
            }
            : null;
    }

    private static Temperature? Air(string text, UnitSystem units) =>
        Typed.Number(text) is { } degrees
            ? units == UnitSystem.Imperial
                ? Temperature.FromFahrenheit(degrees)
                : Temperature.FromCelsius(degrees)
            : null;

    private static WindSpeed? Blowing(string text, UnitSystem units) =>
        Typed.Number(text) is { } number
            ? units == UnitSystem.Imperial
                ? WindSpeed.FromMph(number)
                : WindSpeed.FromMetresPerSecond(number)
            : null;

    private static TimeOnly? Clock(string text) =>
        TimeOnly.TryParseExact(
            text,
            ["H:mm", "HH:mm", "H.mm", "HH.mm", "h:mmtt", "h.mmtt"],
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out TimeOnly at
        )
            ? at
            : null;
}
