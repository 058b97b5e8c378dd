using System.Collections.Immutable;
using FieldSession.Reviewing;
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
            .. plan
                .Route.Skip(from - 1)
                .Take(room)
                .Select(segment => Row(run, segment, study.NextSegment?.Number == segment.Number, columns)),
            PageRow.Of(Columns.Cut(Order(study, plan), columns), Ink.Quiet),
            PageRow.Of(Columns.Cut(Waiting(study), columns)),
        ];
    }

    private static PageRow Row(Run run, Segment segment, bool isNext, int columns) =>
        PageRow
            .Of($"{(isNext ? ">" : " ")}{segment.Number, 3} ", Ink.Strong)
            .And(Columns.Left(segment.Name, columns - MarkColumns - LevelColumns - 1) + " ", isNext ? Ink.Strong : Ink.Plain)
            .And(Levels(run, segment.Number));

    private static string Levels(Run run, int segment) =>
        run.ReadingsOn(segment) switch
        {
            { Length: > 0 } readings => string.Join(
                ' ',
                readings
                    .TakeLast(1)
                    .Select(reading => $"{reading.Levels}{(reading.IsToBeAsked ? " ?" : "")}{(reading.Spoilt is null ? "" : " !")}")
            ),
            _ when run.Passages.Any(passage => passage is Missed && passage.Segment == segment) => "missed",
            _ => "",
        };

    // the codes of the places, the one that is driven or comes next in brackets
    private static string Order(Study study, Plan plan)
    {
        int now = study.RunOn?.Turn ?? study.NextTurn();
        IEnumerable<string> codes = Enumerable
            .Range(0, study.RunsToDrive)
            .Select(turn =>
                (
                    Turn: turn,
                    Code: study.Fitting?.At(plan.Order[study.Steps?[turn] ?? turn])?.ToString()
                        ?? $"{plan.Order[study.Steps?[turn] ?? turn]}"
                )
            )
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

/// <summary>What was just stored, as understood: large figures with ? where doubtful and ! where spoilt, and the same in words.</summary>
internal static class StoredBlock
{
    private const int LetterRows = 3;

    /// <summary>The rows: three beside large figures, or two of plain words; more where a doubt needs them to be read to its end.</summary>
    public static IEnumerable<PageRow> Rows(Study study, int columns, bool large, LetterForm form)
    {
        Passage? last = study.LastRun is { Passages.Count: > 0 } run ? run.Passages[^1] : null;
        string figures = Figures(last);
        if (!large)
        {
            PageRow[] plain = [.. Words(last, study, columns)];
            PageRow head = PageRow.Of("stored ", Ink.Quiet).And(figures, Ink.Strong).And(figures.Length > 0 ? "  " : "").And(plain[0]);
            return [head, .. last is Reading { Doubt: not null } ? plain[2..] : plain[1..2]];
        }

        ImmutableArray<string> letters = LargeText.Of(figures, columns - 14, LetterRows, form);
        int gap = letters.Max(Columns.Of) + 3;
        return Words(last, study, columns - gap)
            .Select((words, row) => PageRow.Of(Columns.Left(row < letters.Length ? letters[row] : "", gap), Ink.Strong).And(words));
    }

    private static string Figures(Passage? last) =>
        last switch
        {
            Reading reading => $"{reading.Levels}{(reading.Doubt is null ? "" : "?")}{(reading.Spoilt is null ? "" : "!")}",
            Missed => "missed",
            _ => "",
        };

    // three rows, or more for a long doubt
    private static IEnumerable<PageRow> Words(Passage? last, Study study, int columns)
    {
        if (last is null)
        {
            return [PageRow.Of(DrivingScreenWords.NothingStoredInRun, Ink.Quiet), PageRow.Blank, PageRow.Blank];
        }

        PageRow segment = PageRow.Of($"{last.Segment} {study.Plan!.Route[last.Segment - 1].Name}", Ink.Strong);
        return last is Reading reading
            ? [segment, Spoilt(reading), .. Doubt(reading, columns)]
            : [segment, PageRow.Of(DrivingScreenWords.MissedPassage), PageRow.Blank];
    }

    private static IEnumerable<PageRow> Doubt(Reading reading, int columns) =>
        reading.Doubt is { } doubt ? Wrapped.Lines($"? {doubt}", columns).Select(line => PageRow.Of(line, Ink.Alarm)) : [PageRow.Blank];

    private static PageRow Spoilt(Reading reading)
    {
        string swapped = reading.Swapped ? DrivingScreenWords.AfterReadingTypedHighFirst : "";
        return reading.Spoilt is { } spoilt
            ? PageRow.Of(
                $"! spoilt: {spoilt.Cause.Word()}{(spoilt.Late ? " (late)" : "")}"
                    + $"{(spoilt.Words is null ? "" : $", {spoilt.Words}")}{swapped}"
            )
            : PageRow.Of($"clean{swapped}");
    }
}

/// <summary>What comes next: the segment in the largest letters that fit, or at a stop what to do.</summary>
internal static class NextBlock
{
    /// <summary>The rows.</summary>
    /// <param name="sight">The study, the keys for what to do at a stop, and how letters are written.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="letterRows">Rows that large letters may take.</param>
    public static IEnumerable<PageRow> Rows(DriveSight sight, int columns, int letterRows) =>
        sight.Study.NextSegment is { } segment ? OnTheRoad(segment, sight, columns, letterRows) : AtAStop(sight, columns, letterRows);

    private static IEnumerable<PageRow> OnTheRoad(Segment segment, DriveSight sight, int columns, int letterRows)
    {
        Plan plan = sight.Study.Plan!;
        string mark = segment.StartMark is { } start ? $"   from {start}" : "";
        PageRow head = PageRow
            .Of($"NEXT {segment.Number} of {plan.Route.Count}   ", Ink.Quiet)
            .And(
                $"{segment.Kind.Word.ToUpperInvariant()}{(segment.Kind.IsImpact ? ", one peak" : "")}   "
                    + $"{segment.Speed.In(plan.Units)}   {segment.Seconds:0} s",
                Ink.Strong
            );
        // a start mark that does not fit beside it takes a row from the large letters: it says where to begin
        return head.Width + Columns.Of(mark) <= columns
            ? [head.And(mark), .. Letters(segment.Name, columns, letterRows, sight.Letters)]
            : [head, PageRow.Of(Columns.Cut(mark, columns)), .. Letters(segment.Name, columns, letterRows - 1, sight.Letters)];
    }

    private static IEnumerable<PageRow> AtAStop(DriveSight sight, int columns, int letterRows) =>
        [
            PageRow.Of("STOP   next:", Ink.Quiet),
            .. Letters(WhatNext.Headline(sight.Study), columns, Math.Min(3, letterRows), sight.Letters),
            .. WhatNext.Rows(sight.Study, sight.Keys, columns),
        ];

    // Always the same number of rows, so that nothing below jumps when a name is too long for large letters.
    private static IEnumerable<PageRow> Letters(string text, int columns, int rows, LetterForm form)
    {
        ImmutableArray<string> letters = LargeText.Of(text, columns, rows, form);
        int above = (rows - letters.Length) / 2;
        return Enumerable
            .Repeat(PageRow.Blank, above)
            .Concat(letters.Select(row => PageRow.Of(row, Ink.Strong)))
            .Concat(Enumerable.Repeat(PageRow.Blank, rows - letters.Length - above));
    }
}
