using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Benchmarks;

/// <summary>
/// What the program makes of questions that are amended after the last run: written into a study of its own, as a crew would type them.
/// </summary>
internal static class AmendedQuestions
{
    /// <summary>The order by code, A the control.</summary>
    public const string Order = "ABBAABBA";

    /// <summary>Another main measure, after the result.</summary>
    public static IReadOnlyList<(ComparisonTerms Headline, ComparisonTerms Amended)> Measures =>
        [Amended("main_measure", "impact"), Amended("main_measure", "all"), .. Segments, Amended("impact_margin_db", "2.5")];

    /// <summary>Another margin, after the result.</summary>
    public static IReadOnlyList<(ComparisonTerms Headline, ComparisonTerms Amended)> Margins =>
        [Amended("margin_db", "1.25"), Amended("margin_db", "1.5"), Amended("margin_db", "2"), Amended("margin_db", "3")];

    private static (ComparisonTerms Headline, ComparisonTerms Amended)[] Segments =>
        [Amended("main_segments", "s0; s1; s2; s3; s4"), Amended("main_segments", "s5; s6; s7; s8; s9")];

    private static (ComparisonTerms Headline, ComparisonTerms Amended) Amended(string what, string to)
    {
        Logbook book = Logbook.Open(new LinesInMemory(), TimeProvider.System, "00000000000000aa");
        Must(book.Write(new PlanMade(Plan)));
        Must(book.Write(new SpecsSealed([new SpecCode("417"), new SpecCode("862")], new string('a', 64))));
        Must(book.Write("calibration before 94.0"));
        Must(book.Write("weather air=6.1 road=5 wind=2.5 gust=4 surface=dry"));
        foreach (int _ in Order)
        {
            Must(book.Write($"run {book.Study.CodeAsked}"));
            foreach (Segment segment in Plan.Route)
            {
                Must(book.Write(segment.Kind.IsImpact ? "70.0" : "58-60"));
            }
        }

        Must(book.Write($"amend {what}={to} because it looks better"));
        return (AsDrawn(StudyTerms.Of(book.Study)), AsDrawn(StudyTerms.ChosenAfter(book.Study)!));
    }

    // the drawn days call the control A
    private static ComparisonTerms AsDrawn(ComparisonTerms terms) => terms with { Reference = "A" };

    private static Plan Plan =>
        new()
        {
            StudyName = "amended",
            SpecCount = 2,
            Order = [.. Order.Select(code => new Place(code - 'A'))],
            Route =
            [
                .. Enumerable
                    .Range(0, 14)
                    .Select(i => new Segment(
                        i + 1,
                        $"s{i}",
                        SegmentKind.Of(i < 10 ? "smooth" : "impact"),
                        Speed.FromKmh(80),
                        Distance.FromMetres(500)
                    )),
            ],
        };

    private static void Must(Outcome outcome)
    {
        if (!outcome.IsWritten)
        {
            throw new InvalidOperationException(outcome.Objection?.ToString());
        }
    }

    /// <summary>A journal that nothing keeps.</summary>
    private sealed class LinesInMemory : IJournal
    {
        private readonly List<Line> _lines = [];

        public IReadOnlyList<Line> Lines => _lines;

        public void Append(Line line) => _lines.Add(line);

        public void Dispose() { }
    }
}
