using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The orders to choose from.</summary>
/// <param name="Orders">The plan's own, then those proposed.</param>
/// <param name="Chosen">The one under the cursor.</param>
/// <param name="RestsOn">What the figures rest on, in few words.</param>
/// <param name="Message">What is wrong with what was typed; null: nothing.</param>
internal sealed record OrdersSight(ImmutableArray<OrderSight> Orders, int Chosen, string RestsOn, string? Message = null)
{
    /// <summary>What earlier days say of the road, a sentence each; empty: nothing.</summary>
    public ImmutableArray<string> Road { get; init; } = [];
}

/// <summary>Orders of runs in a list of a row each, and below it everything that is known of the one under the cursor.</summary>
internal static class OrdersPage
{
    /// <summary>What to do here, and what the figures rest on.</summary>
    public static string Advice(string restsOn) => PlanScreenWords.HowToTakeAnOrder(restsOn);

    private const int NumberColumns = 6;
    private const int FigureColumns = 38;
    private const int FewestDetails = 5;
    private const int DetailColumns = 12;

    /// <summary>The rows.</summary>
    public static IEnumerable<PageRow> Of(OrdersSight sight, int width, int rows)
    {
        OrderSight chosen = sight.Orders[sight.Chosen];
        PageRow[] road = [.. sight.Road.SelectMany((words, at) => Detail((at == 0 ? PlanScreenWords.Road : "", words), width))];
        PageRow[] details = [.. Details(chosen).SelectMany(detail => Detail(detail, width))];
        // the list scrolls, what is below it does not
        int below = road.Length == 0 ? FewestDetails : road.Length + details.Length;
        int listed = Math.Clamp(rows - below - 2, 3, sight.Orders.Length);
        int first = Math.Clamp(sight.Chosen - (listed / 2), 0, sight.Orders.Length - listed);
        string head =
            $"  {Columns.Left("", NumberColumns)}{Columns.Left("order", OrderColumns(width))}{Columns.Right("runs", 5)}"
            + $"{Columns.Right("takes", 13)}{Columns.Right("shows dB", 10)}  drift";
        return
        [
            PageRow.Of(head, Ink.Quiet).Fit(width),
            .. Enumerable.Range(first, listed).Select(number => Row(sight, number, width)),
            PageRow.Blank,
            .. road,
            .. details,
        ];
    }

    private static IEnumerable<(string What, string Words)> Details(OrderSight order) =>
        OrderWords.Details(order).Where(detail => detail.Words.Length > 0);

    private static IEnumerable<PageRow> Detail((string What, string Words) detail, int width) =>
        Wrapped
            .Lines(detail.Words, width - DetailColumns - 2)
            .Select((line, at) => PageRow.Of($"  {Columns.Left(at == 0 ? detail.What : "", DetailColumns)}", Ink.Quiet).And(line));

    private static PageRow Row(OrdersSight sight, int number, int width)
    {
        OrderSight order = sight.Orders[number];
        bool isHere = number == sight.Chosen;
        return PageRow
            .Of($"{(isHere ? ">" : " ")} ")
            .And(Columns.Left(NameOf(number), NumberColumns), Ink.Quiet)
            .And(Columns.Left(string.Join(' ', order.Order), OrderColumns(width)), isHere ? Ink.Strong : Ink.Plain)
            .And(Columns.Right($"{order.Order.Count}", 5))
            .And(Columns.Right(OrderWords.Duration(order.Minutes), 13))
            .And(Columns.Right(Smallest(order), 10))
            .And(order.Steady.Concat(order.Impact).All(place => place.DriftCancels) ? "  cancels" : "  stays")
            .Fit(width);
    }

    private static int OrderColumns(int width) => Math.Max(10, width - NumberColumns - FigureColumns - 2);

    private static string NameOf(int number) => number == 0 ? "own" : $"{number}";

    // the place that can show least says how good the order is
    private static string Smallest(OrderSight order)
    {
        IReadOnlyList<OrderSize> places = order.Steady.Count > 0 ? order.Steady : order.Impact;
        return places.Count == 0 || places.Any(place => place.SmallestDb is null)
            ? "nothing"
            : Figures.FineDb(places.Max(place => place.SmallestDb));
    }
}

/// <summary>What the plan screen says.</summary>
internal static class PlanScreenWords
{
    public const string Road = "road";
    public const string ChooseAnOrder = "order of runs: which one?";
    public const string NoSegmentYet = "  no segment yet: Ctrl+N adds one";
    public const string PlanIsFixed = " The plan of a study that has begun is fixed. 'fieldsession plan PLAN_DIR' edits a plan.";
    public const string NotWrittenYet = "the plan is not written: Ctrl+S writes it; the same key again leaves without";
    public const string NothingToFix = "nothing is left to fix";

    public static string HowToTakeAnOrder(string restsOn) =>
        $"type a number to take that order, or '3 Ro, Tam' to share the wheel; Esc leaves. {restsOn}; shown in 4 of 5 such days";

    public static string WarningsToLookAt(int warnings) => $"{warnings} to look at";

    public static string OrdersNeedARoute => $"Fix the plan first ({PlanKeys.Look} goes to it), then choose an order.";

    public static string NoSuchOrder(int last) => $"there are orders 1 to {last}: type one of these numbers";

    public static string OrderTaken(int number, string order) => $"order {number} is in the plan: {order}; Ctrl+S writes it";
}
