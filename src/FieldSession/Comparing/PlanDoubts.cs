using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>What makes a plan weak although it can be driven: said before the first run, and again in the report.</summary>
public static class PlanDoubts
{
    /// <summary>Every weakness in words, the order's first; empty for a good plan.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. OrderDoubts.Of(plan.Order, plan.SpecCount),
            .. OfCars(plan) is { } cars ? [cars] : Array.Empty<string>(),
            .. plan.Route.Select(segment => OfSegment(segment, plan)).OfType<string>(),
        ];
    }

    /// <summary>Why car and tyre can't be told apart; null: one car, or the tyres change between them.</summary>
    public static string? OfCars(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Cars is null)
        {
            return null;
        }

        if (plan.CarOrder is not { } cars)
        {
            return OrderDoubtWords.NoRunNamesItsCar;
        }

        IGrouping<Place, string>? split = plan.Order.Zip(cars).GroupBy(run => run.First, run => run.Second)
            .FirstOrDefault(runs => runs.Distinct(StringComparer.OrdinalIgnoreCase).Count() == 1);
        return split is null ? null : OrderDoubtWords.CarAndTyreAreNotSeparated(split);
    }

    /// <summary>Why a segment is weak; null: it is long enough, or an impact, where one peak is read.</summary>
    public static string? OfSegment(Segment segment, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(segment);
        ArgumentNullException.ThrowIfNull(plan);
        return segment.Kind.IsImpact || segment.Seconds >= plan.Limits.SegmentShortestSeconds
            ? null
            : $"'{segment.Name}' lasts {segment.Seconds:0.0} s at {segment.Speed.In(plan.Units)}";
    }
}
