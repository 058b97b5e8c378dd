using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>Judges an order on a plan's route: what the plan room knows of it beside what the comparison will make of it.</summary>
internal static class OrderJudgement
{
    // a usual day of own simulations; said to be assumed wherever they are used
    private const double AssumedRunSdDb = 0.35;
    private const double AssumedReadingSdDb = 0.75;

    /// <summary>The order as it is told.</summary>
    /// <param name="plan">The plan with its route.</param>
    /// <param name="proposal">The order.</param>
    /// <param name="between">What is assumed between two runs.</param>
    public static OrderSight Of(Plan plan, OrderProposal proposal, TurnRound between) => new(
        proposal.Order,
        proposal.Cars,
        proposal.Drivers,
        OrderTime.Minutes(proposal, plan.Route, between),
        OrderTime.Refits(proposal),
        proposal.Drivers is { } drivers ? OrderSharing.Unevenness(proposal.Order, drivers) : null,
        OrderDoubts.Of(proposal.Order, plan.SpecCount),
        Sizes(plan, proposal, isImpact: false),
        Sizes(plan, proposal, isImpact: true));

    /// <summary>What was assumed, not measured, in one sentence.</summary>
    public static string AssumedWords(Plan plan, TurnRound between) =>
        $"Assumed, not measured: runs repeat within {AssumedRunSdDb} dB and readings within {AssumedReadingSdDb} dB (standard deviations), chance 80 %; "
        + $"{between.TurnRoundMinutes:0.#} min from run to run, {between.RefitMinutes:0.#} min where tyres are changed. "
        + $"The segments last {OrderTime.RunSeconds(plan.Route):0} s a run; the roads between them are in the turn-round.";

    private static IReadOnlyList<OrderSize> Sizes(Plan plan, OrderProposal proposal, bool isImpact)
    {
        int segments = plan.Route.Count(segment => segment.Kind.IsImpact == isImpact);
        return segments == 0
            ? []
            : OrderSize.Of(proposal.Order, proposal.Cars, new SizeTerms(AssumedRunSdDb, AssumedReadingSdDb, segments, plan.MarginDb, plan.MarginDb));
    }
}
