using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>One segment down to its readings and notes, run by run.</summary>
internal static class SegmentPage
{
    /// <summary>The rows.</summary>
    public static ImmutableArray<PageRow> Of(ReviewSight sight, int columns)
    {
        Segment segment = sight.Plan.Route[sight.Segment - 1];
        return
        [
            PageRow
                .Of($"{segment.Number} of {sight.Plan.Route.Count}  {segment.Name}", Ink.Strong)
                .And($"  {segment.Kind}, {segment.Speed.In(sight.Plan.Units)}{(IsMain(sight, segment) ? "" : "  (explored)")}"),
            PageRow.Blank,
            PageRow.Of(ReviewScreenWords.SegmentRunsHead, Ink.Quiet),
            .. sight.Study.Runs.SelectMany(run => Rows(run, segment, columns)),
            .. sight.Comparison.Comparisons.SelectMany(pair => Difference(sight, pair, segment, columns)),
            PageRow.Blank,
            .. Notes(sight.Study, segment, columns),
        ];
    }

    private static bool IsMain(ReviewSight sight, Segment segment) =>
        sight.Plan.MainSegments is { } names
            ? names.Contains(segment.Name)
            : sight.MainClass is null || sight.MainClass == StudyReadings.ClassOf(segment);

    private static IEnumerable<PageRow> Rows(Run run, Segment segment, int columns)
    {
        Passage[] passages = [.. run.Passages.Where(p => p.Segment == segment.Number)];
        string place = $"{run.Number, 3}  {run.Code, -6}";
        if (passages.Length == 0)
        {
            return [PageRow.Of(place + "not read", Ink.Quiet)];
        }

        return passages.SelectMany(passage => Row(place, passage, columns));
    }

    private static IEnumerable<PageRow> Row(string place, Passage passage, int columns)
    {
        const int LevelColumns = 11;
        string levels = passage is Reading reading ? $"{reading.Levels}" : "missed";
        string[] words = [.. Wrapped.Lines(passage is Reading read ? Words(read) : "", columns - place.Length - LevelColumns)];
        return words.Select(
            (line, at) =>
                PageRow
                    .Of(at == 0 ? place : new string(' ', place.Length))
                    .And(Columns.Left(at == 0 ? levels : "", LevelColumns), Ink.Strong)
                    .And(line)
        );
    }

    private static string? Flag(Spoiling? spoilt) =>
        spoilt is null
            ? null
            : $"{(spoilt.Late ? "flagged late, kept" : "spoilt")}: {spoilt.Cause.Word()}{(spoilt.Words is { } said ? $", {said}" : "")}";

    private static string Words(Reading reading)
    {
        string?[] words =
        [
            Flag(reading.Spoilt),
            reading.IsToBeAsked ? $"? {reading.Doubt}" : null,
            reading.CorrectedFrom is { } before ? $"corrected from {before}" : null,
            reading.Mark.IsTypedLater ? ReviewScreenWords.TypedLater : null,
            reading.FilledAtStop ? ReviewScreenWords.FilledAtStop : null,
            reading.Swapped ? ReviewScreenWords.TypedHighFirst : null,
        ];
        return string.Join("; ", words.OfType<string>());
    }

    private static IEnumerable<PageRow> Difference(ReviewSight sight, CodeComparison pair, Segment segment, int columns)
    {
        int plot = Math.Min(41, columns - 1) | 1;
        double marginDb = sight.MarginDb(StudyReadings.ClassOf(segment));
        yield return PageRow.Blank;
        Estimate? clean = SegmentBlock.On(segment, pair.Classes);
        yield return PageRow
            .Of($"{pair.Code} - {pair.Reference}  ")
            .And($"clean {Figures.Difference(clean)} dB", Ink.Strong)
            .And($", 95 % {Figures.Interval95(clean)}; all {Figures.Difference(SegmentBlock.On(segment, pair.WithSpoilt))} dB");
        if (clean is not null)
        {
            yield return PageRow.Of(IntervalPlot.Scale(sight.SpanDb, plot), Ink.Quiet);
            yield return PageRow.Of(IntervalPlot.Of(clean, marginDb, sight.SpanDb, plot));
        }
    }

    private static IEnumerable<PageRow> Notes(Study study, Segment segment, int columns)
    {
        Note[] notes = [.. study.Notes.Where(note => note.Segment == segment.Number)];
        return notes.Length == 0
            ? [PageRow.Of("no notes", Ink.Quiet)]
            : notes.SelectMany(note =>
                Wrapped
                    .Lines($"run {note.Run?.ToString() ?? "-"}: {note.Words}{(note.Who is { } who ? $" ({who})" : "")}", columns)
                    .Select(line => PageRow.Of(line))
            );
    }
}

/// <summary>Where the codes differ: the tables of kinds and of segments, each with little plots against the margin band.</summary>
internal static class SegmentBlock
{
    /// <summary>What is before the chosen segment.</summary>
    public const string Mark = "> ";

    private const int CodeColumns = 4;
    private const int CountColumns = 5;
    private const int DifferenceColumns = 6;
    private const int IntervalColumns = 14;
    private const int AllColumns = 6;
    private const int LeastPlotColumns = 13;
    private const int MostPlotColumns = 41;
    private const int LeastNameColumns = 16;
    private const int MostNameColumns = 30;

    /// <summary>The table of kinds.</summary>
    public static IEnumerable<PageRow> Kinds(ReviewSight sight, int columns)
    {
        Widths widths = Widths.For(columns);
        yield return Head("kind, segments", widths, sight.SpanDb);
        foreach (CodeComparison pair in sight.Comparison.Comparisons)
        {
            foreach (MeasureClass measureClass in Classes)
            {
                foreach (KindEstimate kind in pair.Classes.Of(measureClass)?.Kinds ?? [])
                {
                    Estimate? all = pair.WithSpoilt.Of(measureClass)?.Kinds.FirstOrDefault(k => k.Kind == kind.Kind)?.Estimate;
                    yield return Row(
                        $"  {kind.Kind}",
                        pair.Code,
                        $"{kind.Segments}",
                        kind.Estimate,
                        all,
                        sight.MarginDb(measureClass),
                        sight.SpanDb,
                        widths
                    );
                }
            }
        }
    }

    /// <summary>The table of segments; the chosen one is marked.</summary>
    public static IEnumerable<PageRow> Segments(ReviewSight sight, int columns)
    {
        Widths widths = Widths.For(columns);
        SegmentCounts counts = SegmentCounts.Of(sight.Day);
        yield return Head("segment", widths, sight.SpanDb);
        foreach (Segment segment in sight.Plan.Route)
        {
            string name = $"{(segment.Number == sight.Segment ? Mark : "  ")}{segment.Number, 2} {segment.Name}";
            MeasureClass measureClass = StudyReadings.ClassOf(segment);
            foreach (CodeComparison pair in sight.Comparison.Comparisons)
            {
                string n = $"{counts.Clean(segment.Name, pair.Code)}/{counts.Clean(segment.Name, pair.Reference)}";
                yield return Row(
                    name,
                    pair.Code,
                    n,
                    On(segment, pair.Classes),
                    On(segment, pair.WithSpoilt),
                    sight.MarginDb(measureClass),
                    sight.SpanDb,
                    widths
                );
                name = "";
            }
        }
    }

    /// <summary>The difference on a segment; null: it is not compared.</summary>
    public static Estimate? On(Segment segment, ClassComparisons classes) =>
        classes.Of(StudyReadings.ClassOf(segment))?.Segments.FirstOrDefault(s => s.Segment == segment.Name)?.Estimate;

    private static MeasureClass[] Classes => [MeasureClass.Steady, MeasureClass.Impact];

    private static PageRow Head(string name, Widths widths, double spanDb) =>
        PageRow.Of(
            Columns.Left($"  {name}", widths.Name)
                + Columns.Left("code", CodeColumns)
                + Columns.Right("n", CountColumns)
                + Columns.Right("clean", DifferenceColumns)
                + Columns.Left(widths.Interval > 0 ? "  95 %" : "", widths.Interval)
                + " "
                + Columns.Left(IntervalPlot.Scale(spanDb, widths.Plot), widths.Plot)
                + Columns.Right("all", AllColumns),
            Ink.Quiet
        );

    private static PageRow Row(
        string name,
        string code,
        string n,
        Estimate? clean,
        Estimate? all,
        double marginDb,
        double spanDb,
        Widths widths
    )
    {
        string interval = $"  {Figures.Short95(clean) ?? (clean is { HasNoUsableInterval: true } ? "no usable" : "not known")}";
        return PageRow
            .Of(Columns.Left(name, widths.Name - 1) + " ", name.StartsWith(Mark, StringComparison.Ordinal) ? Ink.Strong : Ink.Plain)
            .And(Columns.Left(code, CodeColumns) + Columns.Right(n, CountColumns))
            .And(Columns.Right(clean is null ? "-" : $"{clean.DifferenceDb:+0.0;-0.0;0.0}", DifferenceColumns), Ink.Strong)
            .And(Columns.Left(interval, widths.Interval) + " ")
            .And(clean is null ? new string(' ', widths.Plot) : IntervalPlot.Of(clean, marginDb, spanDb, widths.Plot))
            .And(Columns.Right(all is null ? "-" : $"{all.DifferenceDb:+0.0;-0.0;0.0}", AllColumns));
    }

    // Where it is narrow the numbers of the interval go and the plot stays: they are on the segment's own page.
    private readonly record struct Widths(int Name, int Interval, int Plot)
    {
        public static Widths For(int columns)
        {
            int left = columns - CodeColumns - CountColumns - DifferenceColumns - AllColumns - 1;
            int interval = left >= LeastNameColumns + LeastPlotColumns + IntervalColumns ? IntervalColumns : 0;
            int name = Math.Clamp((left - interval) / 2, LeastNameColumns, MostNameColumns);
            int plot = Math.Clamp(left - interval - name, LeastPlotColumns, MostPlotColumns);
            return new Widths(name, interval, plot % 2 == 0 ? plot - 1 : plot);
        }
    }
}
