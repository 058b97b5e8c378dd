using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// For screens with room: the whole route with what this run has read, the order of runs, and how much waits for the stop. Of other runs
/// nothing is shown that could pull the next reading towards it.
/// </summary>
internal static class RouteBlock
{
    private const int MarkColumns = 5;
    private const int LevelColumns = 12;
    private const int RowsBesideRoute = 3;

    /// <summary>The rows, at most so many; where the route does not fit, the segments nearest to the next one are shown.</summary>
    public static IEnumerable<PageRow> Rows(Study study, int columns, int rows)
    {
        int room = rows - RowsBesideRoute;
        if (study is not { Plan: { } plan, LastRun: { } run } || room < 3)
        {
            return [];
        }

        int current = study.NextSegment?.Number ?? plan.Route.Count;
        int from = Math.Clamp(current - (room / 2), 1, Math.Max(1, plan.Route.Count - room + 1));
        return
        [
            PageRow.Of(DrivingScreenWords.RouteOfRun(run), Ink.Quiet),
            .. plan.Route.Skip(from - 1).Take(room).Select(segment => Row(run, segment, study.NextSegment?.Number == segment.Number, columns)),
            PageRow.Of(Columns.Cut(Order(study, plan), columns), Ink.Quiet),
            PageRow.Of(Columns.Cut(Waiting(study), columns)),
        ];
    }

    private static PageRow Row(Run run, Segment segment, bool isNext, int columns) => PageRow
        .Of($"{(isNext ? ">" : " ")}{segment.Number,3} ", Ink.Strong)
        .And(Columns.Left(segment.Name, columns - MarkColumns - LevelColumns - 1) + " ", isNext ? Ink.Strong : Ink.Plain)
        .And(Levels(run, segment.Number));

    private static string Levels(Run run, int segment) => run.ReadingsOn(segment) switch
    {
        { Length: > 0 } readings => string.Join(' ', readings.TakeLast(1).Select(reading =>
            $"{reading.Levels}{(reading.IsToBeAsked ? " ?" : "")}{(reading.Spoilt is null ? "" : " !")}")),
        _ when run.Passages.Any(passage => passage is Missed && passage.Segment == segment) => "missed",
        _ => "",
    };

    // the codes of the places, the one that is driven or comes next in brackets
    private static string Order(Study study, Plan plan)
    {
        int now = study.RunOn?.Turn ?? study.NextTurn();
        IEnumerable<string> codes = Enumerable.Range(0, study.RunsToDrive)
            .Select(turn => (Turn: turn, Code: study.Fitting?.At(plan.Order[study.Steps?[turn] ?? turn])?.ToString() ?? $"{plan.Order[study.Steps?[turn] ?? turn]}"))
            .Select(place => place.Turn == now ? $"[{place.Code}]" : place.Code);
        return $"order {string.Join(' ', codes)}";
    }

    private static string Waiting(Study study)
    {
        int doubts = OpenDoubts.In(study).Count();
        int aborted = Aborts.CountIn(study);
        return DrivingScreenWords.WaitsForStop(doubts, aborted);
    }
}
