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
    /// <param name="archive">How well runs repeated on earlier days; null: assumed.</param>
    public static OrderSight Of(Plan plan, OrderProposal proposal, TurnRound between, IReadOnlyList<ArchiveLine>? archive = null) =>
        new(
            proposal.Order,
            proposal.Cars,
            proposal.Drivers,
            OrderTime.Minutes(proposal, plan.Route, between),
            OrderTime.Refits(proposal),
            proposal.Drivers is { } drivers ? OrderSharing.Unevenness(proposal.Order, drivers) : null,
            OrderDoubts.Of(proposal.Order, plan.SpecCount),
            Sizes(plan, proposal, MeasureClass.Steady, archive),
            Sizes(plan, proposal, MeasureClass.Impact, archive)
        );

    /// <summary>What the figures rest on, in one sentence each: what was assumed, what earlier days showed.</summary>
    public static string AssumedWords(Plan plan, TurnRound between, IReadOnlyList<ArchiveLine>? archive = null)
    {
        string?[] known = [.. new[] { MeasureClass.Steady, MeasureClass.Impact }.Select(one => KnownWords(plan, one, archive))];
        bool isAllKnown = known.All(words => words is not null);
        string assumed = isAllKnown
            ? ""
            : PlanEditingWords.AssumedRepeatability(known.Any(words => words is not null), AssumedRunSdDb, AssumedReadingSdDb);
        return string.Concat(known.OfType<string>().Select(words => $"{words} "))
            + assumed
            + PlanEditingWords.ChanceAndTurnRound(between)
            + PlanEditingWords.DrivingTime(plan);
    }

    /// <summary>The same in few words, for a screen.</summary>
    public static string BriefWords(Plan plan, TurnRound between, IReadOnlyList<ArchiveLine> archive)
    {
        MeasureClass measureClass = SegmentsOf(plan, MeasureClass.Steady) > 0 ? MeasureClass.Steady : MeasureClass.Impact;
        string minutes = PlanEditingWords.TurnRoundMinutes(between);
        return KnownRepeatability.In(archive, measureClass, SegmentsOf(plan, measureClass)) is { } known
            ? PlanEditingWords.BasisFromEarlierDays(known, minutes)
            : PlanEditingWords.AssumedBasis(minutes, AssumedRunSdDb);
    }

    private static string? KnownWords(Plan plan, MeasureClass measureClass, IReadOnlyList<ArchiveLine>? archive) =>
        KnownRepeatability.In(archive, measureClass, SegmentsOf(plan, measureClass)) is { } known
            ? PlanEditingWords.KnownRepeatabilityOf(NameOf(measureClass), known)
            : null;

    private static string NameOf(MeasureClass measureClass) => measureClass == MeasureClass.Steady ? "steady segments" : "impacts";

    private static int SegmentsOf(Plan plan, MeasureClass measureClass) =>
        plan.Route.Count(segment => StudyReadings.ClassOf(segment) == measureClass);

    private static IReadOnlyList<OrderSize> Sizes(
        Plan plan,
        OrderProposal proposal,
        MeasureClass measureClass,
        IReadOnlyList<ArchiveLine>? archive
    )
    {
        int segments = SegmentsOf(plan, measureClass);
        if (segments == 0)
        {
            return [];
        }

        double level = new Looks([proposal.Order.Count]).Now.Difference;
        SizeTerms assumed = new(AssumedRunSdDb, AssumedReadingSdDb, segments, plan.MarginDb, plan.MarginDb, Alpha: level);
        KnownRepeatability? known = KnownRepeatability.In(archive, measureClass, segments);
        return OrderSize.Of(
            proposal.Order,
            proposal.Cars,
            known is null ? assumed : assumed with { RunSdDb = known.RunMeanSdDb, ReadingSdDb = 0 },
            plan.AllPairs == true
        );
    }
}
