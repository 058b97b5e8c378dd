using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Benchmarks;

/// <summary>A study far larger than any day on the road: 1,000 segments and as many runs as it takes.</summary>
internal sealed class LargeStudy : IJournal
{
    private const int Segments = 1000;

    private readonly List<Line> _lines = [];

    public IReadOnlyList<Line> Lines => _lines;

    /// <summary>Writes a study of so many readings, the last run still on where they do not fill it.</summary>
    public static LargeStudy Of(int readings)
    {
        LargeStudy study = new();
        Logbook book = Logbook.Open(study, TimeProvider.System, "00000000000000aa");
        Must(book.Write(new PlanMade(PlanOf(readings / Segments + 1))));
        Must(book.Write(new SpecsSealed([new SpecCode("417"), new SpecCode("862")], new string('a', 64))));
        Must(book.Write("calibration before 94.0"));
        Must(book.Write("weather air=6.1 road=5 wind=2.5 gust=4 surface=dry"));
        Random lot = new(1);
        for (int i = 0; i < readings; i++)
        {
            if (i % Segments == 0)
            {
                Must(book.Write($"run {book.Study.CodeAsked}"));
            }

            int low = lot.Next(55, 70);
            Must(book.Write($"{low}-{low + lot.Next(1, 4)}"));
        }

        return study;
    }

    public void Append(Line line) => _lines.Add(line);

    public void Dispose() { }

    private static void Must(Outcome outcome)
    {
        if (!outcome.IsWritten)
        {
            throw new InvalidOperationException(outcome.Objection?.ToString());
        }
    }

    private static Plan PlanOf(int runs) =>
        new()
        {
            StudyName = "large",
            SpecCount = 2,
            Order = [.. Enumerable.Range(0, runs).Select(i => new Place(i % 4 is 1 or 2 ? 1 : 0))],
            Route =
            [
                .. Enumerable
                    .Range(1, Segments)
                    .Select(i => new Segment(
                        i,
                        $"segment {i}",
                        SegmentKind.Of("smooth"),
                        Measures.Speed.FromKmh(80),
                        Distance.FromMetres(500)
                    )),
            ],
        };
}
