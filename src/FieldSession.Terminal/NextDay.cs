using System.Collections.Immutable;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>The order of a further day, where what is missing asks for one: it follows from the order and from what was driven, never from a result.</summary>
internal static class NextDay
{
    /// <summary>What to type so that the order grows by a day; null: nothing asks for one.</summary>
    public static string? Line(Study study) => StillMissing.WantsAnotherDay(study)
        ? PlanningWords.HowToAddADay(string.Join(' ', study.Plan!.Order), string.Join(' ', OrderOf(study)))
        : null;

    // every second day goes backwards
    private static ImmutableList<Place> OrderOf(Study study)
    {
        Plan plan = study.Plan!;
        Amendment[] grown = [.. study.Amendments.Where(amendment => amendment is { What: "order", OrderWasDriven: true })];
        ImmutableList<Place> first = grown.Length == 0 ? plan.Order : OrderText.Parse(grown[0].From, plan.SpecCount, out _) ?? plan.Order;
        return grown.Length % 2 == 0 ? OrderProposals.NextDay(first) : first;
    }
}
