using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>What the legs screen is drawn from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Form">The form.</param>
/// <param name="Message">What was wrong, or what was stored; null: nothing to say.</param>
/// <param name="IsAlarm">Whether the message must be seen.</param>
internal sealed record LegsSight(Study Study, LegForm Form, string? Message, bool IsAlarm);

/// <summary>
/// The legs screen in words, for a charging stop: what is asked, the box, the form so far, the days with their swaps, the last legs. No
/// difference of codes is here; it waits for the review.
/// </summary>
internal static class LegsPage
{
    /// <summary>Row of the box.</summary>
    public const int BoxRow = 2;

    private const int PromptColumns = 12;
    private const int CellColumns = 18;
    private const int LeastLegRows = 3;

    /// <summary>Column of the box.</summary>
    public static int BoxColumn => PromptColumns + 1;

    /// <summary>The page in so many columns and rows.</summary>
    public static ImmutableArray<PageRow> Of(LegsSight sight, int columns, int rows)
    {
        ImmutableArray<PageRow> top =
        [
            PageRow
                .Of($" LEG {sight.Study.Legs.Count + 1}", Ink.Strong)
                .WithRight(PageRow.Of(LegsScreenWords.AtStopOnly, Ink.Quiet), columns),
            PageRow.Of($" {sight.Form.Asked.Words}{Suggested(sight.Form.Asked)}", Ink.Quiet),
            PageRow.Of(Columns.Right($"{sight.Form.Asked.Part} >", PromptColumns), Ink.Strong),
            .. MessageRows.Of(sight.Message, columns - 3, sight.IsAlarm ? Ink.Alarm : Ink.Plain),
            .. FormRows(sight.Form, columns),
            PageRow.Blank,
        ];
        ImmutableArray<PageRow> days = [.. DayRows(sight.Study, Math.Max(0, rows - top.Length - LeastLegRows - 1))];
        int left = Math.Max(0, rows - top.Length - days.Length - 1);
        return [.. top.Concat(days).Append(PageRow.Blank).Concat(LegRows(sight.Study, left)).Take(rows).Select(row => row.Fit(columns))];
    }

    private static string Suggested(LegField field) => field.Value.Length > 0 ? LegsScreenWords.EnterTakes(field.Value) : "";

    private static IEnumerable<PageRow> FormRows(LegForm form, int columns) =>
        form
            .Fields.Index()
            .Chunk(Math.Max(1, (columns - 1) / CellColumns))
            .Select(cells =>
                cells.Aggregate(
                    PageRow.Of(" "),
                    (row, cell) =>
                        row.And(
                            Columns.Left(
                                $"{(cell.Index == form.At ? ">" : " ")}{cell.Item.Part} "
                                    + $"{(cell.Item.Value.Length > 0 ? cell.Item.Value : "-")}",
                                CellColumns
                            ),
                            cell.Index == form.At ? Ink.Strong : Ink.Plain
                        )
                )
            );

    private static IEnumerable<PageRow> DayRows(Study study, int most)
    {
        int last = Math.Max(study.Plan?.Energy.Days.Count ?? 0, study.Legs.Count == 0 ? 0 : study.Legs.Max(leg => leg.Figures.Day));
        string[] cars = [.. CarsOf(study)];
        if (cars.Length == 0 || most < 2)
        {
            return [];
        }

        int from = Math.Max(1, Math.Min(last - most + 2, (study.Legs.LastOrDefault()?.Figures.Day ?? 1) - 1));
        return
        [
            PageRow.Of($" day  {string.Concat(cars.Select(car => Columns.Left($"car {car}", CellColumns)))}", Ink.Quiet),
            .. Enumerable
                .Range(from, Math.Max(0, Math.Min(most - 1, last - from + 1)))
                .Select(day =>
                    PageRow.Of($" {day, 3}  {string.Concat(cars.Select(car => Columns.Left(Cell(study, day, car), CellColumns)))}")
                ),
        ];
    }

    private static IEnumerable<string> CarsOf(Study study) =>
        (study.Plan?.Energy.Days.SelectMany(day => day.Fits).Select(fit => fit.Car) ?? [])
            .Concat(study.Legs.Select(leg => leg.Figures.Car))
            .Distinct(StringComparer.OrdinalIgnoreCase);

    private static string Cell(Study study, int day, string car)
    {
        EnergyLeg[] legs = [.. study.Legs.Where(leg => leg.Figures.Day == day && CrewMember.SamePerson(leg.Figures.Car, car))];
        if (legs.Length > 0)
        {
            string codes = string.Join(' ', legs.Select(leg => leg.Figures.Code.Digits).Distinct());
            return $"{codes}, {legs.Length} leg{(legs.Length == 1 ? "" : "s")}";
        }

        return study.Plan?.Energy.Day(day)?.On(car) is { } planned && study.Fitting?.At(planned) is { } code ? $"({code})" : "-";
    }

    private static IEnumerable<PageRow> LegRows(Study study, int most)
    {
        if (study.Legs.Count == 0)
        {
            return [PageRow.Of(LegsScreenWords.NoLegYet, Ink.Quiet)];
        }

        UnitSystem units = study.Plan?.Units ?? UnitSystem.Metric;
        return study.Legs.Reverse().Take(most).Select(leg => LegRow(leg, units));
    }

    private static PageRow LegRow(EnergyLeg leg, UnitSystem units)
    {
        LegFigures figures = leg.Figures;
        string spoilt = leg.Spoilt is { } flag ? $"  ! {flag.Cause.Word()}{(flag.Late ? ", late" : "")}" : "";
        return PageRow
            .Of(
                $" {leg.Number, 3}  day {figures.Day}  {figures.Car} {figures.Code}  {figures.Distance.OnTheRoadIn(units)}  "
                    + $"{figures.Energy}  {figures.Consumption.In(units)}{spoilt}"
            )
            .And(leg.Doubt is { } doubt ? $"  ? {doubt}" : "", Ink.Alarm);
    }
}
