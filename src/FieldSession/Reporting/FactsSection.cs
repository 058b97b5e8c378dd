using System.Globalization;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>Car, tyres, meter and people: what a colleague asks before believing a number. What is missing is named in one line.</summary>
public static class FactsSection
{
    private const double KpaPerBar = 100;

    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new ReportSection(ReportPart.Facts, FactsWords.Title, []);
        }

        (string Name, string? Value)[] facts = [.. Facts(study, plan)];
        string[] missing = [.. facts.Where(fact => fact.Value is null).Select(fact => fact.Name.ToLowerInvariant())];
        return new ReportSection(ReportPart.Facts, FactsWords.Title,
        [
            new Points([.. facts.Where(fact => fact.Value is not null).Select(fact => $"{fact.Name}: {fact.Value}.")]),
            .. missing.Length == 0 ? [] : new ReportBlock[] { new Paragraph(FactsWords.NotWrittenDown(string.Join(", ", missing))) },
        ]);
    }

    private static IEnumerable<(string Name, string? Value)> Facts(Study study, Plan plan) =>
    [
        ("Car", plan.Facts.Car ?? (plan.Cars is { Count: > 0 } cars ? string.Join(", ", cars) : null)),
        (FactsWords.TyreSize, plan.TyreSize),
        (FactsWords.TyresMade, plan.Facts.TyresMade),
        ("Tread", plan.Facts.Tread),
        ("Hardness", plan.Facts.Hardness),
        (FactsWords.ColdPressures, Pressures(plan)),
        (FactsWords.MeterAndClass, plan.Facts.Meter),
        (FactsWords.MeterPosition, plan.Facts.MeterPosition),
        (FactsWords.WhoDrove, Drivers(study, plan)),
        (FactsWords.WhoTyped, plan.Crew.Count > 1 ? FactsWords.TypedAndFlagged(plan.Crew[1].Name) : null),
        (FactsWords.LocalTime, plan.Facts.UtcOffsetMinutes is { } minutes ? FactsWords.AheadOfUtc(Local.Offset(minutes)) : null),
    ];

    private static string? Pressures(Plan plan) => (plan.PressureFrontKpa, plan.PressureRearKpa) switch
    {
        (null, null) => null,
        var (front, rear) => FactsWords.FrontAndRear(Bar(front), Bar(rear)),
    };

    private static string Bar(double? kpa) => kpa is { } known ? (known / KpaPerBar).ToString("0.00", CultureInfo.CurrentCulture) : FactsWords.NotPlanned;

    private static string? Drivers(Study study, Plan plan)
    {
        string[] drivers = [.. study.Runs.Select(run => run.Driver).OfType<string>().Distinct()];
        return drivers switch
        {
            [] => plan.Crew is [{ Name: var driver }, ..] ? driver : null,
            [var alone] => FactsWords.DroveAllRuns(alone),
            _ => string.Join("; ", drivers.Select(driver => FactsWords.DroveRuns(driver, study.Runs.Where(run => run.Driver == driver).Select(run => run.Number)))),
        };
    }
}
