using FieldSession.Measures;

namespace FieldSession.Comparing;

/// <summary>The blind comparison of the energy days: codes against a reference, nothing about what a code is.</summary>
public sealed record EnergyComparison
{
    /// <summary>The code that the others are compared with.</summary>
    public required string Reference { get; init; }

    /// <summary>Margin of equivalence, percent.</summary>
    public required double MarginPercent { get; init; }

    /// <summary>Electricity or fuel.</summary>
    public required EnergyCarrier Carrier { get; init; }

    /// <summary>The stretches of the legs that count.</summary>
    public IReadOnlyList<EnergyStretch> Stretches { get; init; } = [];

    /// <summary>How many legs were driven.</summary>
    public int Legs { get; init; }

    /// <summary>Of these, left out as spoilt.</summary>
    public int Spoilt { get; init; }

    /// <summary>What each code took in all, the reference first.</summary>
    public IReadOnlyList<CodeConsumption> Codes { get; init; } = [];

    /// <summary>How the cars differ on the same tyres, each against the first; empty where that can't be told.</summary>
    public IReadOnlyList<CarDifference> Cars { get; init; } = [];

    /// <summary>One entry for every code that is not the reference.</summary>
    public IReadOnlyList<EnergyFinding> Findings { get; init; } = [];

    /// <summary>What holds for the days as a whole, in plain words.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Compares the codes. Pure: same legs and terms, same result. Method: docs/formulas.md, "Energy days".</summary>
    /// <param name="legs">The legs, those of one car in driven order.</param>
    /// <param name="terms">Reference, margin, usable capacity, limits.</param>
    /// <exception cref="ArgumentException">There is no leg, a figure is not above 0, or the margin is not between 0 and 100.</exception>
    public static EnergyComparison Of(IReadOnlyList<MeasuredLeg> legs, EnergyTerms terms)
    {
        Check(legs, terms);
        IReadOnlyList<EnergyStretch> clean = EnergyStretch.Of(legs, withSpoilt: false);
        EnergyModel model = EnergyModel.Of(clean);
        EnergyModel all = EnergyModel.Of(EnergyStretch.Of(legs, withSpoilt: true));
        string[] driven = [.. legs.Select(leg => leg.Code).Distinct()];
        string reference = terms.Reference is { } wanted && driven.Contains(wanted) ? wanted : driven[0];
        CodeConsumption[] codes = [.. driven.OrderBy(code => code != reference).Select(code => CodeConsumption.Of(code, model.Counted))];
        return new EnergyComparison
        {
            Reference = reference,
            MarginPercent = terms.MarginPercent,
            Carrier = terms.Carrier,
            Stretches = clean,
            Legs = legs.Count,
            Spoilt = legs.Count(leg => leg.Spoilt),
            Codes = codes,
            Cars = CarDifference.Of(model, reference),
            Findings = EnergyFinding.Of([.. driven.Where(code => code != reference)], reference, model, all, terms, codes[0].PerHundredKm),
            Remarks =
            [
                .. terms.Reference is { } asked && asked != reference
                    ? [EnergyRemarkWords.NoLegOnReferenceYet(asked, reference)]
                    : Array.Empty<string>(),
                .. driven.Length > 2 ? [EnergyRemarkWords.EnergyWordsAllowForAllCodes] : Array.Empty<string>(),
                .. EnergyRemarks.OfDays(clean, model, terms),
            ],
        };
    }

    private static void Check(IReadOnlyList<MeasuredLeg> legs, EnergyTerms terms)
    {
        if (legs.Count == 0 || legs.Any(leg => !(leg.DistanceKm > 0 && leg.KwhOrLitres > 0)))
        {
            throw new ArgumentException("an energy day has legs, each with a distance and an energy above 0", nameof(legs));
        }

        if (terms.MarginPercent is not (> 0 and < 100))
        {
            throw new ArgumentException("a margin is between 0 and 100 %", nameof(terms));
        }
    }
}

/// <summary>What a code took in all over the stretches that count.</summary>
/// <param name="Code">The code.</param>
/// <param name="Stretches">How many stretches.</param>
/// <param name="DistanceKm">Kilometres in all.</param>
/// <param name="KwhOrLitres">kWh or litres in all.</param>
public sealed record CodeConsumption(string Code, int Stretches, double DistanceKm, double KwhOrLitres)
{
    /// <summary>Total energy over total distance, kWh or litres per 100 km; null: nothing counts.</summary>
    public double? PerHundredKm => DistanceKm > 0 ? 100 * KwhOrLitres / DistanceKm : null;

    /// <summary>The totals of a code.</summary>
    internal static CodeConsumption Of(string code, IEnumerable<EnergyStretch> counted)
    {
        EnergyStretch[] own = [.. counted.Where(stretch => stretch.Code == code)];
        return new CodeConsumption(code, own.Length, own.Sum(stretch => stretch.DistanceKm), own.Sum(stretch => stretch.KwhOrLitres));
    }
}

/// <summary>How much more one car takes than another on the same tyres.</summary>
/// <param name="Car">The car.</param>
/// <param name="FirstCar">The car it is held against.</param>
/// <param name="Percent">The difference, percent.</param>
public sealed record CarDifference(string Car, string FirstCar, double Percent)
{
    /// <summary>The cars of a model, each against the first; a car that cannot be told from a code is left out.</summary>
    internal static IReadOnlyList<CarDifference> Of(EnergyModel model, string reference)
    {
        string[] cars = [.. model.Counted.Select(stretch => stretch.Car).Distinct()];
        return
        [
            .. from car in cars.Skip(1)
            let logRatio = model.CarLine(car, cars[0], reference)?.LogRatio
            where logRatio is not null
            select new CarDifference(car, cars[0], EnergyEstimate.PercentOf(logRatio.Value)),
        ];
    }
}
