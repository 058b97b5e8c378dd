using FieldSession.Store.Planning;

namespace FieldSession.Tests.Planning;

/// <summary>A small good plan, and ways to spoil it.</summary>
internal static class PlanTexts
{
    public const string Plan = "study = \"XX-1\"\nspecs = 2\norder = \"R 1 R 1 R\"\n";

    public const string Route = "segment,kind,speed_kmh,length_m\nLong lane,smooth,80,900\nBridge joint,impact,50,60\n";

    public static PlanReading WithPlan(string more) => PlanFolder.Parse(Plan + more, Route, "folder");

    public static PlanReading WithPlanOf(string plan) => PlanFolder.Parse(plan, Route, "folder");

    public static PlanReading WithRoute(string route) => PlanFolder.Parse(Plan, route, "folder");

    public static PlanReading WithOrder(string order, int specs) =>
        PlanFolder.Parse($"specs = {specs}\norder = \"{order}\"", Route, "folder");

    public static PlanProblem OnlyProblem(PlanReading reading)
    {
        Assert.Null(reading.Plan);
        return Assert.Single(reading.Problems);
    }
}
