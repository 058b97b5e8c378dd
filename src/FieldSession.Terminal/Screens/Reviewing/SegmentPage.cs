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
            PageRow.Of($"{segment.Number} of {sight.Plan.Route.Count}  {segment.Name}", Ink.Strong)
                .And($"  {segment.Kind}, {segment.Speed.In(sight.Plan.Units)}{(IsMain(sight, segment) ? "" : "  (explored)")}"),
            PageRow.Blank,
            PageRow.Of(ReviewScreenWords.SegmentRunsHead, Ink.Quiet),
            .. sight.Study.Runs.SelectMany(run => Rows(run, segment, columns)),
            .. sight.Comparison.Comparisons.SelectMany(pair => Difference(sight, pair, segment, columns)),
            PageRow.Blank,
            .. Notes(sight.Study, segment, columns),
        ];
    }

    private static bool IsMain(ReviewSight sight, Segment segment) => sight.Plan.MainSegments is { } names
        ? names.Contains(segment.Name)
        : sight.MainClass is null || sight.MainClass == StudyReadings.ClassOf(segment);

    private static IEnumerable<PageRow> Rows(Run run, Segment segment, int columns)
    {
        Passage[] passages = [.. run.Passages.Where(p => p.Segment == segment.Number)];
        string place = $"{run.Number,3}  {run.Code,-6}";
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
        return words.Select((line, at) => PageRow
            .Of(at == 0 ? place : new string(' ', place.Length))
            .And(Columns.Left(at == 0 ? levels : "", LevelColumns), Ink.Strong)
            .And(line));
    }

    private static string? Flag(Spoiling? spoilt) => spoilt is null
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
        yield return PageRow.Of($"{pair.Code} - {pair.Reference}  ")
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
            : notes.SelectMany(note => Wrapped
                .Lines($"run {note.Run?.ToString() ?? "-"}: {note.Words}{(note.Who is { } who ? $" ({who})" : "")}", columns)
                .Select(line => PageRow.Of(line)));
    }
}
