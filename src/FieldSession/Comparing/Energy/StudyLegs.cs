using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The energy days of a study as the comparison sees them: by code, with what was spoilt.</summary>
public static class StudyLegs
{
    /// <summary>
    /// Every leg, spoilt ones included; those of one car in the order of their start times, or as typed where one is unknown.
    /// </summary>
    public static IReadOnlyList<MeasuredLeg> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return
        [
            .. study
                .Legs.GroupBy(leg => (leg.Figures.Day, Car: leg.Figures.Car.Trim().ToUpperInvariant()))
                .SelectMany(day => InTime([.. day]))
                .Select(leg => Measured(leg, study)),
        ];
    }

    /// <summary>The terms that the plan fixed for the comparison of consumption.</summary>
    public static EnergyTerms TermsOf(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        Plan? plan = study.Plan;
        EnergyPlan energy = plan?.Energy ?? new EnergyPlan();
        EnergyCarrier carrier = study.Legs.FirstOrDefault()?.Figures.Energy.Carrier ?? EnergyCarrier.Electricity;
        return new EnergyTerms(
            study.Fitting?.At(Place.Reference)?.Digits,
            energy.MarginPercent,
            carrier,
            UsableOf(study, carrier),
            IsComplete(study)
        )
        {
            DistanceShortKm = energy.DistanceShortKm,
            ChargeLeastPercent = energy.ChargeLeastPercent,
            WindWarnMetresPerSecond = (plan?.Limits ?? new Limits()).WindWarnMetresPerSecond,
        };
    }

    /// <summary>The comparison of a study's energy days; null: no leg was driven.</summary>
    /// <param name="study">The study.</param>
    /// <param name="reference">The code to compare with; null: the plan's.</param>
    public static EnergyComparison? ComparisonOf(Study study, string? reference = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        EnergyTerms terms = TermsOf(study);
        return study.Legs.Count == 0 ? null : EnergyComparison.Of(Of(study), terms with { Reference = reference ?? terms.Reference });
    }

    private static IEnumerable<EnergyLeg> InTime(EnergyLeg[] day) =>
        day.All(leg => leg.Figures.At is not null) ? day.OrderBy(leg => leg.Figures.At) : day;

    private static MeasuredLeg Measured(EnergyLeg leg, Study study)
    {
        LegFigures figures = leg.Figures;
        string car = study.Legs.First(other => CrewMember.SamePerson(other.Figures.Car, figures.Car)).Figures.Car.Trim();
        return new MeasuredLeg(figures.Day, car, figures.Code.Digits, figures.Distance.Kilometres, figures.Energy.KwhOrLitres)
        {
            Spoilt = leg.LeftOut,
            Driver = figures.Driver?.Trim().ToUpperInvariant(),
            AirCelsius = figures.AirCelsius,
            WindMetresPerSecond = figures.Wind?.MetresPerSecond,
            ChargeUsedPercent = figures.FromCharge ? figures.Charge?.Percent : null,
            EnergyUncertainty = figures.EnergyUncertainty,
        };
    }

    // One capacity for all cars, or none: a range on two batteries says nothing about tyres.
    private static double? UsableOf(Study study, EnergyCarrier carrier)
    {
        if (study.Plan?.Energy.Usable is { } planned && planned.Carrier == carrier)
        {
            return planned.KwhOrLitres;
        }

        double[] said =
        [
            .. study
                .Legs.Select(leg => leg.Figures.Usable)
                .OfType<Energy>()
                .Where(e => e.Carrier == carrier)
                .Select(e => e.KwhOrLitres)
                .Distinct(),
        ];
        return said is [var only] ? only : null;
    }

    private static bool IsComplete(Study study) =>
        study.Plan?.Energy.Days is not { Count: > 0 } days
        || Enumerable
            .Range(1, days.Count)
            .All(day =>
                days[day - 1]
                    .Fits.All(fit => study.Legs.Any(leg => leg.Figures.Day == day && CrewMember.SamePerson(leg.Figures.Car, fit.Car)))
            );
}
