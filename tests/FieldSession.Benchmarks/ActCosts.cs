using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.State;

namespace FieldSession.Benchmarks;

/// <summary>What an act costs without a disk: a typed line read, its fact written, a journal of 2,000 lines read back.</summary>
[MemoryDiagnoser]
[Config(typeof(InThisProcess))]
public class ActCosts
{
    private const int Lines = 2000;

    private readonly Study _study = Study.Empty;
    private Line[] _lines = [];

    [GlobalSetup]
    public void WriteTheJournal()
    {
        List<Line> lines = [];
        foreach (Entry entry in Entries().Take(Lines))
        {
            string previous = lines.Count == 0 ? Line.NoHash : lines[^1].Hash;
            lines.Add(EntryKinds.Of(entry).Write(entry, lines.Count + 1, previous, DateTimeOffset.UnixEpoch, "00000000000000aa"));
        }

        _lines = [.. lines];
    }

    [Benchmark]
    public Parsed TypedLine() => EntryText.Parse("58.4-60.1 t van alongside", _study);

    [Benchmark]
    public Line WrittenFact() => EntryKinds.Of(Read).Write(Read, 2, _lines[0].Hash, DateTimeOffset.UnixEpoch, "00000000000000aa");

    [Benchmark]
    public Study JournalOf2000Lines() => Logbook.Fold(_lines);

    private static ReadingTaken Read => new(LevelRange.FromDb(58.4, 60.1), Spoilt: SpoiltCause.Traffic, Words: "van alongside");

    private static IEnumerable<Entry> Entries()
    {
        yield return new PlanMade(
            new Plan
            {
                StudyName = "T-1",
                SpecCount = 2,
                Order = [new Place(0), new Place(1), new Place(1), new Place(0)],
                Route =
                [
                    .. Enumerable
                        .Range(1, 14)
                        .Select(number => new Segment(
                            number,
                            $"Segment {number}",
                            SegmentKind.Of("smooth"),
                            Measures.Speed.FromKmh(80),
                            Distance.FromMetres(500)
                        )),
                ],
            }
        );
        while (true)
        {
            yield return new RunStarted(new SpecCode("417"), null);
            for (int segment = 0; segment < 14; segment++)
            {
                yield return Read;
            }
        }
    }

    private sealed class InThisProcess : ManualConfig
    {
        // No project is generated beside the house's own, and nothing is built a second time.
        public InThisProcess()
        {
            AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
            ArtifactsPath = Path.Combine(".artifacts", "benchmarks");
        }
    }
}
