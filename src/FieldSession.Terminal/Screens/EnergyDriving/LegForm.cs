using System.Collections.Immutable;
using System.Globalization;
using FieldSession.EnergyDriving;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>One field of the form: a part of the leg.</summary>
/// <param name="Part">The part's name in an entry line.</param>
/// <param name="Words">What is asked, with its unit.</param>
/// <param name="IsNeeded">Whether the leg is nothing without it.</param>
/// <param name="Value">What was typed or suggested; empty: nothing.</param>
internal sealed record LegField(string Part, string Words, bool IsNeeded, string Value = "");

/// <summary>The form that a leg is typed into at a charging stop, field by field; Enter takes a value, or what is suggested.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="At">The field that is asked now.</param>
internal sealed record LegForm(ImmutableArray<LegField> Fields, int At)
{
    private const string EnergyPart = "energy";

    private static ImmutableArray<string> UnitWords { get; } = ["impgal", "gal", "l", "kwh"];

    /// <summary>The field that is asked now.</summary>
    public LegField Asked => Fields[At];

    /// <summary>Whether the field that is asked is the last one.</summary>
    public bool IsAtLast => At == Fields.Length - 1;

    /// <summary>The line that the form means.</summary>
    public string Line => "leg " + string.Join(' ', Fields.Where(one => one.Value.Length > 0).Select(Typed));

    /// <summary>An empty form for the next leg of a study, with what is likely filled in; it asks the first field that is not.</summary>
    public static LegForm For(Study study, DateOnly today)
    {
        bool imperial = study.Plan?.Units == UnitSystem.Imperial;
        NextLeg next = NextLeg.In(study, today);
        ImmutableArray<LegField> fields =
        [
            new("day", LegsScreenWords.DayField, true, next.Day),
            new("car", "which car", true, next.Car),
            new("code", LegsScreenWords.CodeField, true, next.Code),
            new("driver", LegsScreenWords.DriverField, false, next.Driver),
            imperial ? new("mi", "miles", true) : new("km", "kilometres", true),
            new(EnergyPart, EnergyWords(study), true),
            new("t0", LegsScreenWords.AirAtStartField(Degrees(imperial)), false),
            new("t1", LegsScreenWords.AirAtEndField(Degrees(imperial)), false),
            new("wind", $"mean wind, {(imperial ? "mph" : "m/s")}", false),
            imperial ? new("mph", LegsScreenWords.SpeedInMphField, false) : new("kmh", "mean speed, km/h", false),
            new("at", LegsScreenWords.BeginField, false),
        ];
        int first = fields.ToList().FindIndex(field => field.IsNeeded && field.Value.Length == 0);
        return new LegForm(fields, next.Car.Length == 0 ? first : 0);
    }

    /// <summary>The form with a value taken and the next field asked; or what is wrong with the value.</summary>
    public (LegForm Form, string? Wrong) Take(string typed, UnitSystem units)
    {
        string value = typed.Trim();
        string kept = value.Length == 0 ? Asked.Value : value.Replace(" ", "", StringComparison.Ordinal);
        if (kept.Length == 0 && Asked.IsNeeded)
        {
            return (this, $"{Asked.Part} is needed: {Asked.Words}");
        }

        LegField taken = Asked with { Value = kept };
        string? wrong = kept.Length == 0 ? null : WrongWith(taken, units);
        return wrong is null ? (new LegForm(Fields.SetItem(At, taken), Math.Min(At + 1, Fields.Length - 1)), null) : (this, wrong);
    }

    /// <summary>The form at the field before.</summary>
    public LegForm Back => this with { At = Math.Max(0, At - 1) };

    private static string? WrongWith(LegField field, UnitSystem units)
    {
        string[] halves = Typed(field).Split('=', 2);
        return LegParts.Named(halves[0]) is { } part
            ? LegParts.With(LegDraft.Empty, part, halves[1], units).Wrong
            : LegsScreenWords.NoAmount(field.Value);
    }

    // 38.0 is kWh, 80-31 a state of charge, 13.2l and 3.5gal fuel.
    private static string Typed(LegField field)
    {
        if (field.Part != EnergyPart)
        {
            return $"{field.Part}={field.Value}";
        }

        string value = field.Value.ToLowerInvariant();
        string unit = UnitWords.FirstOrDefault(word => value.EndsWith(word, StringComparison.Ordinal), "");
        return value.IndexOf('-', StringComparison.Ordinal) > 0
            ? $"soc={value}"
            : $"{(unit.Length > 0 ? unit : "kwh")}={value[..^unit.Length]}";
    }

    private static string EnergyWords(Study study) =>
        study.Plan?.Energy.Usable is null ? LegsScreenWords.EnergyFieldWithoutCharge : LegsScreenWords.EnergyField;

    private static string Degrees(bool imperial) => imperial ? "degF" : "degC";
}

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
        string car = cars.IsEmpty
            ? ""
            : cars.MinBy(c => study.Legs.Count(leg => leg.Figures.Day == day && CrewMember.SamePerson(leg.Figures.Car, c)))!;
        EnergyLeg? last = study.Legs.LastOrDefault(leg => CrewMember.SamePerson(leg.Figures.Car, car));
        SpecCode? code = Planned(study, day, car) ?? (last?.Figures.Day == day ? last.Figures.Code : null);
        return new NextLeg(day.ToString(CultureInfo.InvariantCulture), car, code?.Digits ?? "", last?.Figures.Driver ?? "");
    }

    private static DateOnly DateOf(EnergyLeg leg) => DateOnly.FromDateTime(leg.Mark.At.UtcDateTime);

    private static ImmutableArray<string> CarsOf(Study study, int day) =>
        study.Plan?.Energy.Day(day) is { } planned
            ? [.. planned.Fits.Select(fit => fit.Car)]
            : [.. study.Legs.Select(leg => leg.Figures.Car).Distinct(StringComparer.OrdinalIgnoreCase)];

    private static SpecCode? Planned(Study study, int day, string car) =>
        study.Plan?.Energy.Day(day)?.On(car) is { } place ? study.Fitting?.At(place) : null;
}
