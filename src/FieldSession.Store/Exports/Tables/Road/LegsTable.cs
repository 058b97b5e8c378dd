using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The legs of the energy days; the command 'legs' reads them back.</summary>
internal static class LegsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<EnergyLeg>(
            "legs",
            "The legs of the energy days: one row a leg, in typed order.",
            [.. Place, .. Amounts, .. Conditions, .. Record],
            source => source.Study.Legs
        )
        {
            Key = ["leg"],
            Links = [new("code", "codes", "code")],
        };

    private static ImmutableArray<ExportColumn<EnergyLeg>> Place =>
        [
            Column.Count<EnergyLeg>("leg", "number, from 1", leg => leg.Number).Always,
            Column.Count<EnergyLeg>("day", "number of the energy day", leg => leg.Figures.Day).Always,
            Column.Text<EnergyLeg>("car", "the car", leg => leg.Figures.Car).Always,
            Column.Text<EnergyLeg>("code", "code on the car", leg => leg.Figures.Code.Digits).Always,
            Column.Text<EnergyLeg>("driver", "who drove", leg => leg.Figures.Driver),
            Column.Number<EnergyLeg>("distance_km", "km", "how far", leg => leg.Figures.Distance.Kilometres).Always,
        ];

    private static ImmutableArray<ExportColumn<EnergyLeg>> Amounts =>
        [
            Column.Number<EnergyLeg>("energy_kwh", "kWh", "energy by the car's meter", leg => Typed(leg, EnergyUnit.KilowattHour)),
            Column.Number<EnergyLeg>("fuel_l", "l", "fuel, typed in litres", leg => Typed(leg, EnergyUnit.Litre)),
            Column.Number<EnergyLeg>("fuel_us_gal", "US gal", "fuel, typed in US gallons", leg => Typed(leg, EnergyUnit.UsGallon)),
            Column.Number<EnergyLeg>(
                "fuel_imp_gal",
                "imp gal",
                "fuel, typed in imperial gallons",
                leg => Typed(leg, EnergyUnit.ImperialGallon)
            ),
            Column.Number<EnergyLeg>(
                "energy_step",
                "as typed",
                "smallest step of the typed energy",
                leg => leg.Figures.EnergyStep > 0 ? leg.Figures.EnergyStep : null
            ),
            Column.Number<EnergyLeg>("soc_start_percent", "%", "state of charge at the start", leg => leg.Figures.Charge?.Start.Percent),
            Column.Number<EnergyLeg>("soc_end_percent", "%", "state of charge at the end", leg => leg.Figures.Charge?.End.Percent),
            Column.Number<EnergyLeg>("soc_step_percent", "%", "step of its display", leg => leg.Figures.Charge?.StepPercent),
            Column.Number<EnergyLeg>("usable_kwh", "kWh", "usable capacity of the battery", leg => Usable(leg, EnergyCarrier.Electricity)),
            Column.Number<EnergyLeg>("tank_l", "l", "usable litres of the tank", leg => Usable(leg, EnergyCarrier.Fuel)),
            Column
                .Number<EnergyLeg>(
                    "per_100_km",
                    "kWh or l per 100 km",
                    "energy over distance, derived",
                    leg => leg.Figures.Consumption.PerHundredKm
                )
                .Always,
        ];

    private static ImmutableArray<ExportColumn<EnergyLeg>> Conditions =>
        [
            Column.Number<EnergyLeg>("air_start_c", "degC", "air at the start", leg => leg.Figures.AirAtStart?.Celsius),
            Column.Number<EnergyLeg>("air_end_c", "degC", "air at the end", leg => leg.Figures.AirAtEnd?.Celsius),
            Column.Number<EnergyLeg>("wind_m_s", "m/s", "mean wind", leg => leg.Figures.Wind?.MetresPerSecond),
            Column.Number<EnergyLeg>("speed_kmh", "km/h", "mean speed", leg => leg.Figures.MeanSpeed?.Kmh),
            Column.Text<EnergyLeg>("start", "local time it began", leg => leg.Figures.At?.ToString("HH:mm", CultureInfo.InvariantCulture)),
            Column.Number<EnergyLeg>("minutes", "min", "how long it took", leg => leg.Figures.Minutes),
        ];

    private static ImmutableArray<ExportColumn<EnergyLeg>> Record =>
        [
            Column.Text<EnergyLeg>(
                "spoilt",
                "what spoilt it, where it is left out; empty: it counts",
                leg => leg.LeftOut ? leg.Spoilt!.Cause.Word() : null
            ),
            Column.Text<EnergyLeg>(
                "late_flag",
                "what spoilt it, where the flag came too late to leave it out",
                leg => leg.Spoilt is { Late: true } late ? late.Cause.Word() : null
            ),
            Column.Text<EnergyLeg>("note", "words about what spoilt it", leg => leg.Spoilt?.Words),
            Column.Text<EnergyLeg>("doubt", "why it is doubtful", leg => leg.Doubt),
            Column.Text<EnergyLeg>("typed", "the line or row as it was typed", leg => leg.Figures.Typed),
            Column.Count<EnergyLeg>("line", "journal line", leg => leg.Mark.Place).Always,
            Column.Time<EnergyLeg>("at", "when it was typed", leg => leg.Mark.At).Always,
            Column
                .YesNo<EnergyLeg>("typed_later", "whether it was logged on paper and typed in afterwards", leg => leg.Mark.IsTypedLater)
                .Always,
        ];

    private static double? Typed(EnergyLeg leg, EnergyUnit unit) =>
        !leg.Figures.FromCharge && leg.Figures.Energy.Unit == unit ? leg.Figures.Energy.Amount : null;

    private static double? Usable(EnergyLeg leg, EnergyCarrier carrier) =>
        leg.Figures.Usable is { } usable && usable.Carrier == carrier ? usable.KwhOrLitres : null;
}
