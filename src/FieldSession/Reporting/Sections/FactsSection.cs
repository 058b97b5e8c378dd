using System.Globalization;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>Car, tyres, meter and people: what a colleague asks before believing a number. What is missing is named in one line.</summary>
public static class FactsSection
{
    private const double KpaPerBar = 100;
    private const string CheckOfPressures = "pressure";

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
        return new ReportSection(
            ReportPart.Facts,
            FactsWords.Title,
            [
                new Points([.. facts.Where(fact => fact.Value is not null).Select(fact => $"{fact.Name}: {fact.Value}.")]),
                .. missing.Length == 0 ? [] : new ReportBlock[] { new Paragraph(FactsWords.NotWrittenDown(string.Join(", ", missing))) },
            ]
        );
    }

    private static IEnumerable<(string Name, string? Value)> Facts(Study study, Plan plan) =>
        [
            ("Car", plan.Facts.Car ?? (plan.Cars is { Count: > 0 } cars ? string.Join(", ", cars) : null)),
            (FactsWords.TyreSize, plan.TyreSize),
            (FactsWords.TyresMade, plan.Facts.TyresMade),
            ("Tread", plan.Facts.Tread),
            ("Hardness", plan.Facts.Hardness),
            (
                FactsWords.ColdPressures,
                Pressures(plan) ?? (study.Checks.Any(check => check.Name == CheckOfPressures) ? FactsWords.TypedAsChecks : null)
            ),
            (FactsWords.MeterAndClass, plan.Facts.Meter),
            (FactsWords.MeterPosition, plan.Facts.MeterPosition),
            (FactsWords.WhoDrove, Drivers(study, plan)),
            (FactsWords.WhoTyped, plan.Crew.Count > 1 ? FactsWords.TypedAndFlagged(plan.Crew[1].Name) : null),
            (FactsWords.LocalTime, plan.Facts.UtcOffsetMinutes is { } minutes ? FactsWords.AheadOfUtc(Local.Offset(minutes)) : null),
        ];

    private static string? Pressures(Plan plan) =>
        (plan.PressureFrontKpa, plan.PressureRearKpa) switch
        {
            (null, null) => null,
            var (front, rear) => FactsWords.FrontAndRear(Bar(front), Bar(rear)),
        };

    private static string Bar(double? kpa) =>
        kpa is { } known ? (known / KpaPerBar).ToString("0.00", CultureInfo.CurrentCulture) : FactsWords.NotPlanned;

    private static string? Drivers(Study study, Plan plan)
    {
        string[] drivers = [.. study.Runs.Select(run => run.Driver).OfType<string>().Distinct()];
        return drivers switch
        {
            [] => plan.Crew is [{ Name: var driver }, ..] ? driver : null,
            [var alone] => FactsWords.DroveAllRuns(alone),
            _ => string.Join(
                "; ",
                drivers.Select(driver =>
                    FactsWords.DroveRuns(driver, study.Runs.Where(run => run.Driver == driver).Select(run => run.Number))
                )
            ),
        };
    }
}

/// <summary>Times of day at the place of the day.</summary>
public static class Local
{
    private const int MinutesAnHour = 60;

    /// <summary>"+02:00".</summary>
    public static string Offset(int minutes)
    {
        int size = Math.Abs(minutes);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{(minutes < 0 ? '-' : '+')}{size / MinutesAnHour:00}:{size % MinutesAnHour:00}"
        );
    }

    /// <summary>The local time of day, "14:05".</summary>
    /// <param name="at">The moment.</param>
    /// <param name="offsetMinutes">What the clocks there are ahead of UTC.</param>
    public static string TimeOfDay(DateTimeOffset at, int offsetMinutes) =>
        at.ToOffset(TimeSpan.FromMinutes(offsetMinutes)).ToString("HH:mm", CultureInfo.InvariantCulture);
}

/// <summary>What the report says of car, tyres, meter and people.</summary>
internal static class FactsWords
{
    public const string Title = "Car, tyres, meter and people";
    public const string TyreSize = "Tyre size";
    public const string TyresMade = "Tyres made";
    public const string ColdPressures = "Cold pressures";
    public const string MeterAndClass = "Meter and class";
    public const string MeterPosition = "Position of the meter";
    public const string WhoDrove = "Who drove";
    public const string WhoTyped = "Who typed";
    public const string LocalTime = "Local time";
    public const string NotPlanned = "not planned";
    public const string TypedAsChecks = "no target planned; left against right is in 'Checks'";

    public static string NotWrittenDown(string missing) => $"Not written down: {missing}.";

    public static string TypedAndFlagged(string name) => $"{name}, who also gave the flags";

    public static string AheadOfUtc(string offset) => $"UTC{offset}; times in this report are UTC unless both are shown";

    public static string FrontAndRear(string front, string rear) => $"front {front} bar, rear {rear} bar at 20 degC";

    public static string DroveAllRuns(string driver) => $"{driver}, all runs";

    public static string DroveRuns(string driver, IEnumerable<int> runs) => $"{driver} runs {string.Join(", ", runs)}";
}
