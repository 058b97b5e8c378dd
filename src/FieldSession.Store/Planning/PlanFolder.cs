using System.Collections.Immutable;
using System.Text;
using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Planning;

/// <summary>
/// Reads the folder in which a crew plans its day: <c>plan.toml</c> and <c>route.csv</c>. Everything that is wrong is told
/// at once, with file, line and what is allowed; nothing is ever guessed into a plan.
/// </summary>
public static class PlanFolder
{
    /// <summary>Reads a plan folder.</summary>
    /// <param name="folder">The folder; its name is the study's where the plan names none.</param>
    public static PlanReading Read(string folder)
    {
        Troubles troubles = new();
        if (!Directory.Exists(folder))
        {
            troubles.Refuse(folder, null, null, PlanFolderWords.NoSuchFolder, PlanFolderWords.NamePlanFolder);
            return new PlanReading(null, troubles.Problems, []);
        }

        string? plan = PlanFile.Read(folder, PlanFile.Plan, troubles);
        string? route = PlanFile.Read(folder, PlanFile.Route, troubles);
        return Of(plan, route, new DirectoryInfo(folder).Name, troubles);
    }

    /// <summary>Reads a plan from the texts of its two files, as they lie in the demo.</summary>
    /// <param name="planToml">Text of <c>plan.toml</c>.</param>
    /// <param name="routeCsv">Text of <c>route.csv</c>.</param>
    /// <param name="folderName">The study's name where the plan names none.</param>
    public static PlanReading Parse(string planToml, string routeCsv, string folderName) =>
        Of(planToml, routeCsv, folderName, new Troubles());

    /// <summary>Writes an order, with its cars and drivers, into the plan of a folder; the rest of the text stays as it is.</summary>
    /// <param name="folder">A folder that can be read.</param>
    /// <param name="proposal">The order.</param>
    /// <exception cref="IOException">The file can't be written; the old one is whole.</exception>
    public static void WriteOrder(string folder, OrderProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        string path = Path.Combine(folder, PlanFile.Plan);
        string text = PlanText.With(SmallText.Read(path), "order", PlanText.Quoted(proposal.ToString()));
        text = PlanText.With(text, "car_order", proposal.Cars is { } cars ? PlanText.Listed(cars) : null);
        text = PlanText.With(text, "driver_order", proposal.Drivers is { } drivers ? PlanText.Listed(drivers) : null);
        WholeFile.Write(new Disk(), path, Encoding.UTF8.GetBytes(text));
    }

    private static PlanReading Of(string? planToml, string? routeCsv, string folderName, Troubles troubles)
    {
        PlanWords? words = planToml is null ? null : PlanToml.Parse(planToml.TrimStart('\uFEFF'), troubles);
        RouteReading? route = routeCsv is null ? null : RouteCsv.Parse(routeCsv.TrimStart('\uFEFF'), troubles);
        Plan? plan = words is null ? null : PlanDraft.Of(words, folderName, route, troubles);
        if (words is null || route is null || plan is null || !troubles.IsNone)
        {
            return new PlanReading(null, troubles.Problems, troubles.Warnings);
        }

        WarnOfOrder(plan, words, troubles);
        WarnOfShortSegments(plan, route, troubles);
        return new PlanReading(plan, [], troubles.Warnings);
    }

    private static void WarnOfOrder(Plan plan, PlanWords words, Troubles troubles)
    {
        foreach (string doubt in OrderDoubts.Of(plan.Order, plan.SpecCount))
        {
            words.Find("order")?.Warn(troubles, doubt, PlanFolderWords.CanBeDriven);
        }

        if (PlanDoubts.OfCars(plan) is { } ofCars)
        {
            (words.Find("car_order") ?? words.Find("cars"))?.Warn(troubles, ofCars, PlanFolderWords.CanBeDrivenOrSharedOut);
        }
    }

    private static void WarnOfShortSegments(Plan plan, RouteReading route, Troubles troubles)
    {
        foreach ((Segment segment, int line) in plan.Route.Zip(route.Lines))
        {
            if (PlanDoubts.OfSegment(segment, plan) is { } doubt)
            {
                string metres = Distance.FromMetres(plan.Limits.SegmentShortestSeconds * segment.Speed.Kmh / 3.6).In(plan.Units);
                troubles.Warn(PlanFile.Route, line, null, doubt, PlanFolderWords.LongerSegmentLetsMeterSettle(metres));
            }
        }
    }
}

/// <summary>What came of reading a plan folder.</summary>
/// <param name="Plan">The plan; null where there are problems.</param>
/// <param name="Problems">Everything that rules it out, at most 20; empty where the plan is good.</param>
/// <param name="Warnings">What is weak but can be driven, and words that were passed over.</param>
public sealed record PlanReading(Plan? Plan, ImmutableList<PlanProblem> Problems, ImmutableList<PlanProblem> Warnings);
