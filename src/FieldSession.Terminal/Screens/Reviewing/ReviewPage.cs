using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>The blind summary: the answer card, then warnings and the main measure, then what is explored beyond it. Codes only.</summary>
internal static class ReviewPage
{
    private const int HashColumns = 16;

    /// <summary>The rows.</summary>
    public static ImmutableArray<PageRow> Of(ReviewSight sight, int columns)
    {
        string[] warnings = [.. Warnings.Of(sight)];
        return
        [
            .. warnings.Length == 0 ? [] : Text(ReviewScreenWords.WarningsBelow(warnings.Length), columns),
            .. BlindCard.Rows(sight.Study, sight.Day, sight.Comparison, sight.Ear, columns),
            PageRow.Blank,
            .. Text(ReviewScreenWords.HowToReadSummary(sight.Comparison.Reference ?? "no code"), columns),
            .. Cautions(warnings, columns),
            .. MainMeasure(sight, columns),
            .. EarBlock.Rows(sight, columns),
            .. Codes(sight, columns),
            .. Explored(sight, columns),
            PageRow.Blank,
            .. Text(ReviewScreenWords.JournalHead(sight.Journal.Lines, sight.Journal.HeadHash[..HashColumns]), columns),
        ];
    }

    private static IEnumerable<PageRow> Text(string words, int columns) => Wrapped.Lines(words, columns).Select(line => PageRow.Of(line));

    private static IEnumerable<PageRow> Head(string words) => [PageRow.Blank, PageRow.Of(words, Ink.Strong)];

    private static IEnumerable<PageRow> Cautions(string[] warnings, int columns) =>
        warnings.Length == 0
            ? []
            :
            [
                .. Head("LOOK OUT"),
                .. warnings.SelectMany(words =>
                    Wrapped.Lines(words, columns - 2).Select((line, place) => PageRow.Of(place == 0 ? "! " : "  ", Ink.Strong).And(line))
                ),
            ];

    private static IEnumerable<PageRow> MainMeasure(ReviewSight sight, int columns) =>
        [
            PageRow.Blank,
            .. Wrapped
                .Lines($"MAIN MEASURE: {MainMeasureWords.Of(sight.Plan.MainMeasure, sight.Plan.MainSegments)}", columns)
                .Select(line => PageRow.Of(line, Ink.Strong)),
            .. sight.Comparison.Asked.SelectMany(pair => ClassBlock.Rows(sight, pair, sight.MainClass, whole: true, columns)),
            .. sight.Comparison.Main.Count == 0 ? Text(ReviewScreenWords.NothingToCompare, columns) : [],
            .. ChosenAfter(sight, columns),
        ];

    private static IEnumerable<PageRow> ChosenAfter(ReviewSight sight, int columns)
    {
        string[] sentences = [.. ChosenAfterWords.Sentences(sight.Study, sight.Day)];
        return sentences.Length == 0 ? [] : [PageRow.Blank, .. sentences.SelectMany(words => Text(words, columns))];
    }

    private static IEnumerable<PageRow> Codes(ReviewSight sight, int columns)
    {
        const string Columns = ReviewScreenWords.CountsHead;
        return
        [
            PageRow.Blank,
            PageRow.Of(Columns, Ink.Quiet),
            .. sight.Study.Codes.Select(code => Code(sight.Study, code)),
            .. Text(
                $"{sight.Comparison.Readings.Total} readings, {sight.Comparison.Readings.Spoilt} "
                    + $"spoilt{Causes(sight.Comparison.Readings)}, {sight.Comparison.Readings.Missed} "
                    + $"missed{ReviewScreenWords.AndReplaced(sight.Comparison.Readings.Replaced)}",
                columns
            ),
        ];
    }

    private static PageRow Code(Study study, SpecCode code)
    {
        Run[] runs = [.. study.Runs.Where(run => run.Code == code)];
        Reading[] readings = [.. runs.SelectMany(run => run.Readings)];
        int missed = runs.Sum(run => (study.Plan?.Route.Count ?? 0) - run.Readings.Select(r => r.Segment).Distinct().Count());
        return PageRow.Of(
            $"{code, -4}{runs.Length, 6}{readings.Length, 10}{readings.Count(r => r.LeftOut), 8}"
                + $"{readings.Count(r => r.Spoilt is { Late: true }), 6}{missed, 8}"
        );
    }

    private static string Causes(ReadingCounts counts) =>
        counts.Spoilt == 0 ? "" : $" ({string.Join(", ", counts.ByCause.Select(cause => $"{cause.Key} {cause.Value}"))})";

    private static IEnumerable<PageRow> Explored(ReviewSight sight, int columns)
    {
        if (sight.Comparison.Comparisons.Count == 0)
        {
            return [];
        }

        MeasureClass?[] others =
        [
            .. new MeasureClass?[] { null, MeasureClass.Steady, MeasureClass.Impact }.Where(one =>
                sight.Plan.MainSegments is not null || one != sight.MainClass
            ),
        ];
        return
        [
            .. others.SelectMany(one =>
                (IEnumerable<PageRow>)
                    [
                        .. Head($"explored: {Name(one)}"),
                        .. sight.Comparison.Comparisons.SelectMany(pair => ClassBlock.Rows(sight, pair, one, whole: false, columns)),
                    ]
            ),
            .. Head(ReviewScreenWords.KindsOfSurfaceHead),
            .. SegmentBlock.Kinds(sight, columns),
            .. Head(ReviewScreenWords.SegmentsHead),
            .. SegmentBlock.Segments(sight, columns),
            .. Text(ReviewScreenWords.HowToReadSegments, columns),
        ];
    }

    private static string Name(MeasureClass? measureClass) =>
        measureClass switch
        {
            null => ReviewScreenWords.AllSegmentsTogether,
            MeasureClass.Steady => ReviewScreenWords.SteadySegments,
            _ => "the impacts",
        };
}

/// <summary>What the ear says on the blind summary, by code only: forced choices first, then ratings.</summary>
internal static class EarBlock
{
    /// <summary>The rows; none where the ear says nothing.</summary>
    public static IEnumerable<PageRow> Rows(ReviewSight sight, int columns)
    {
        EarFindings ear = sight.Ear;
        return ear.IsEmpty
            ? []
            :
            [
                PageRow.Blank,
                PageRow.Of("THE EAR", Ink.Strong),
                .. Sentences(ear)
                    .SelectMany(words =>
                        Wrapped.Lines(words, columns - 2).Select((line, place) => PageRow.Of(place == 0 ? "- " : "  ", Ink.Quiet).And(line))
                    ),
            ];
    }

    private static IEnumerable<string> Sentences(EarFindings ear) =>
        [
            .. ear.Choices.Select(choice => $"set {choice.Set}: {ChoiceWords.Sentence(choice)}"),
            .. ear.Ratings.Select(rating =>
                $"{rating.Attribute}, {rating.Code} minus {rating.Reference}: {EarWords.Points(rating.MeanPoints)} "
                + $"points{(rating.CanDecide ? $"; {EarWords.Test(rating)}" : "")}"
            ),
            .. EarWords.About(ear.Ratings),
            .. ear.Agreements.Select(EarWords.Agreement),
            .. ear.Covered > 0 ? [ReviewScreenWords.RatingsCovered(ear.Covered)] : Array.Empty<string>(),
        ];
}

/// <summary>One code against the reference over one class, clean readings and all readings side by side.</summary>
internal static class ClassBlock
{
    private const int LabelColumns = 24;
    private const int MostCellColumns = 26;
    private const int ShortFigures = 2;

    /// <summary>The rows.</summary>
    /// <param name="sight">What the page is made from.</param>
    /// <param name="pair">The code and the reference.</param>
    /// <param name="measureClass">The class; null: all segments.</param>
    /// <param name="whole">Whether every figure is told, or the difference and its interval only.</param>
    /// <param name="columns">Columns to fill.</param>
    public static IEnumerable<PageRow> Rows(ReviewSight sight, CodeComparison pair, MeasureClass? measureClass, bool whole, int columns)
    {
        if (pair.Classes.Of(measureClass) is not { } clean || pair.WithSpoilt.Of(measureClass) is not { } all)
        {
            return [];
        }

        int cell = Math.Min(MostCellColumns, (columns - LabelColumns) / 2);
        PageRow Row(string label, string left, string right, Ink ink = Ink.Plain) =>
            PageRow.Of(Columns.Left(label, LabelColumns)).And(Columns.Left(left, cell), ink).And(Columns.Left(right, cell), ink);
        ImmutableArray<ClassFigure> figures = whole ? ClassFigures.Of(clean) : ClassFigures.Of(clean)[..ShortFigures];
        int plot = (cell - 4) | 1;
        double marginDb = sight.MarginDb(measureClass);
        return
        [
            Row($"{pair.Code} - {pair.Reference}", "clean readings", "all readings", Ink.Quiet),
            .. figures.Select(
                (figure, place) => Row(figure.Label, figure.Cell(clean), figure.Cell(all), place == 0 ? Ink.Strong : Ink.Plain)
            ),
            Row(
                $"margin {Figures.MarginDb(marginDb)} dB",
                Plot(clean, marginDb, sight.SpanDb, plot),
                Plot(all, marginDb, sight.SpanDb, plot)
            ),
            .. whole
                ? [Row("", IntervalPlot.Scale(sight.SpanDb, plot), IntervalPlot.Scale(sight.SpanDb, plot), Ink.Quiet)]
                : Array.Empty<PageRow>(),
            .. clean.IsExplored ? [] : Verdicts(clean, all, columns),
        ];
    }

    private static string Plot(ClassComparison one, double marginDb, double spanDb, int columns) =>
        one.Overall is { } overall ? IntervalPlot.Of(overall, marginDb, spanDb, columns) : "";

    private static IEnumerable<PageRow> Verdicts(ClassComparison clean, ClassComparison all, int columns) =>
        all.Verdict == clean.Verdict
            ? Verdict("verdict", clean.Verdict, columns)
            : [.. Verdict("verdict, clean", clean.Verdict, columns), .. Verdict("verdict, all", all.Verdict, columns)];

    private static IEnumerable<PageRow> Verdict(string label, string words, int columns) =>
        Wrapped
            .Lines(words, columns - LabelColumns)
            .Select((line, place) => PageRow.Of(Columns.Left(place == 0 ? label : "", LabelColumns)).And(line, Ink.Strong));
}
