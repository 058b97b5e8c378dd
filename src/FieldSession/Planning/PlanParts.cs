using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>The parts of a plan that may be amended on the way, by the words that the plan folder calls them.</summary>
public static class PlanParts
{
    /// <summary>Largest margin, dB: beyond it no two specs differ, and a margin there is a slip of the point.</summary>
    public const double LargestMarginDb = 20;

    private const int LongestQuestion = 400;

    // what means no main segments: all that the main measure takes
    private const string NoSegments = "-";

    /// <summary>The words.</summary>
    public static ImmutableArray<string> Words { get; } =
    ["question", "main_measure", "main_segments", "margin_db", "impact_margin_db", "order"];

    /// <summary>What a part of the plan is now, as it would be typed; null: no such part.</summary>
    public static string? Now(Plan plan, string what)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return what switch
        {
            "question" => plan.Question,
            "main_measure" => plan.MainMeasure.ToString().ToLowerInvariant(),
            "main_segments" => plan.MainSegments is { } names ? string.Join("; ", names) : NoSegments,
            "margin_db" => InWords(plan.MarginDb),
            "impact_margin_db" => InWords(plan.ImpactMarginDb),
            "order" => string.Join(' ', plan.Order),
            _ => null,
        };
    }

    /// <summary>The plan with one part changed, or why not.</summary>
    /// <param name="plan">The plan as it is.</param>
    /// <param name="what">The part.</param>
    /// <param name="to">What it is to be, as typed.</param>
    /// <param name="isAppendOnly">Whether runs have been driven, so that the order can only grow at its end.</param>
    public static (Plan? Plan, Objection? Objection) Change(Plan plan, string what, string to, bool isAppendOnly)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(to);
        return what switch
        {
            "question" when to.Length is > 0 and <= LongestQuestion => (plan with { Question = to }, null),
            "question" => No(PlanningWords.QuestionIsEmptyOrTooLong, PlanningWords.WriteQuestionWithin(LongestQuestion)),
            "main_measure" => Measure(plan, to),
            "main_segments" when to == NoSegments => (plan with { MainSegments = null }, null),
            "main_segments" => Segments(plan, to),
            "margin_db" => Margin(to, margin => plan with { MarginDb = margin }),
            "impact_margin_db" => Margin(to, margin => plan with { ImpactMarginDb = margin }),
            "order" => Order(plan, to, isAppendOnly),
            _ => No(PlanningWords.PartCantBeAmended(what), PlanningWords.AmendablePartsAre(string.Join(", ", Words))),
        };
    }

    private static (Plan? Plan, Objection? Objection) Measure(Plan plan, string to)
    {
        if (!Enum.TryParse(to, ignoreCase: true, out MainMeasure measure) || !Enum.IsDefined(measure) || char.IsAsciiDigit(to[0]))
        {
            return No(PlanningWords.IsNoMainMeasure(to), PlanningWords.MainMeasuresAre);
        }

        IEnumerable<Segment> main = plan.Route.Where(segment => plan.MainSegments?.Contains(segment.Name) == true);
        return MainSegmentNames.AgainstMeasure(main, measure) is { } against
            ? No(against.Why, PlanningWords.AmendSegmentsAroundMeasure)
            : (plan with { MainMeasure = measure }, null);
    }

    private static (Plan? Plan, Objection? Objection) Segments(Plan plan, string to)
    {
        string[] names = to.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        ImmutableList<string>? main = MainSegmentNames.On(names, plan.Route, plan.MainMeasure, out Objection? wrong);
        return main is null ? (null, wrong) : (plan with { MainSegments = main }, null);
    }

    private static (Plan? Plan, Objection? Objection) Margin(string to, Func<double, Plan> changed) =>
        Typed.Number(to) is > 0 and <= LargestMarginDb and var margin
            ? (changed(margin), null)
            : No(PlanningWords.IsNoMargin(to), PlanningWords.MarginRange(LargestMarginDb));

    private static (Plan? Plan, Objection? Objection) Order(Plan plan, string to, bool isAppendOnly)
    {
        if (OrderText.Parse(to, plan.SpecCount, out Objection? wrong) is not { } order)
        {
            return (null, wrong);
        }

        bool isAppended = order.Count > plan.Order.Count && order.Take(plan.Order.Count).SequenceEqual(plan.Order);
        return isAppendOnly && !isAppended
            ? No(PlanningWords.OrderCanOnlyGrow, PlanningWords.TypeWholeOrder(Now(plan, "order")))
            : (plan with { Order = order }, null);
    }

    private static (Plan? Plan, Objection? Objection) No(string why, string instead) => (null, new Objection(why, instead));

    private static string InWords(double number) => number.ToString("0.0###", CultureInfo.InvariantCulture);
}

/// <summary>Holds the names of main segments against the route: the day's question is answered on these segments only.</summary>
public static class MainSegmentNames
{
    /// <summary>The names as the route spells them, in route order; null where one can't be a main segment.</summary>
    /// <param name="names">The names as typed; capitals don't tell them apart.</param>
    /// <param name="route">The route.</param>
    /// <param name="measure">The main measure, which every main segment must be read for.</param>
    /// <param name="objection">What is wrong, and what is allowed; null where the names are good.</param>
    public static ImmutableList<string>? On(
        IReadOnlyList<string> names,
        IReadOnlyList<Segment> route,
        MainMeasure measure,
        out Objection? objection
    )
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(route);
        string? unknown = names.FirstOrDefault(name => !route.Any(segment => IsNamed(segment, name)));
        Segment[] found = [.. route.Where(segment => names.Any(name => IsNamed(segment, name)))];
        objection =
            names.Count == 0 ? new Objection(PlanningWords.NoMainSegmentIsNamed, PlanningWords.NameSegmentsOfRoute)
            : unknown is not null
                ? new Objection(
                    PlanningWords.IsNoSegmentOfRoute(unknown),
                    PlanningWords.SegmentsOfRouteAre(string.Join(", ", route.Select(segment => segment.Name)))
                )
            : AgainstMeasure(found, measure);
        return objection is null ? [.. found.Select(segment => segment.Name)] : null;
    }

    /// <summary>What rules out segments under a main measure; null: nothing.</summary>
    public static Objection? AgainstMeasure(IEnumerable<Segment> segments, MainMeasure measure) =>
        segments.FirstOrDefault(segment => measure != MainMeasure.All && segment.Kind.IsImpact != (measure == MainMeasure.Impact))
            is { } other
            ? new Objection(PlanningWords.MainSegmentIsNotMeasured(other, measure), PlanningWords.NameSegmentsOfMainMeasure)
            : null;

    private static bool IsNamed(Segment segment, string name) =>
        string.Equals(segment.Name, name.Trim(), StringComparison.OrdinalIgnoreCase);
}
