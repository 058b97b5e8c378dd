using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Tests.Making;

/// <summary>A day of driving in the job's words: planned and sealed, then typed line by line.</summary>
internal sealed class ADay
{
    public ADay(Plan? plan = null, bool isSealed = true)
    {
        Book = Logbook.Open(Journal, Clock, "00000000000000aa");
        Must(Book.Write(new PlanMade(plan ?? ShortPlan)));
        if (isSealed)
        {
            Must(Book.Write(new SpecsSealed([new SpecCode("417"), new SpecCode("862")], new string('a', 64))));
        }
    }

    public MemoryJournal Journal { get; } = new();

    public StoppedClock Clock { get; } = new();

    public Logbook Book { get; }

    public Study Study => Book.Study;

    /// <summary>Two steady segments and an impact, two specs, driven R 1 R.</summary>
    public static Plan ShortPlan =>
        new()
        {
            StudyName = "T-1",
            Question = "Is the candidate louder?",
            SpecCount = 2,
            Order = [new Place(0), new Place(1), new Place(0)],
            Route =
            [
                ASegment(1, "Mill lane", "smooth") with
                {
                    NominalDb = 60,
                },
                ASegment(2, "Quarry road", "coarse"),
                ASegment(3, "Bridge joint", "impact"),
            ],
            Crew = [new CrewMember("Ro", CrewMember.DriverSeat), new CrewMember("Tam", CrewMember.CoDriverSeat)],
            Custodian = "Ilse",
            Phrases = ["hollow ring", "grit"],
        };

    public static Segment ASegment(int number, string name, string kind) =>
        new(number, name, SegmentKind.Of(kind), Speed.FromKmh(80), Distance.FromMetres(500));

    /// <summary>Types lines that must all be taken.</summary>
    public ADay Typed(params ImmutableArray<string> lines)
    {
        foreach (string line in lines)
        {
            Outcome outcome = Book.Write(line);
            Assert.True(outcome.IsWritten, $"'{line}' was not taken: {outcome.Objection}{outcome.NotSavedBecause}");
        }

        return this;
    }

    /// <summary>Calibrated and dry: ready for the first run.</summary>
    public ADay Ready() => Typed("calibration before 94.0", "weather air=6.1 road=5 wind=2.5 gust=4 surface=dry");

    /// <summary>The answer to one line that must be taken.</summary>
    public Echo Answer(string line)
    {
        Outcome outcome = Book.Write(line);
        Assert.True(outcome.IsWritten, $"'{line}' was not taken: {outcome.Objection}");
        return outcome.Echo!;
    }

    /// <summary>The objection to one line that must not be taken; nothing may have changed.</summary>
    public Objection Refusal(string line)
    {
        Study before = Study;
        Outcome outcome = Book.Write(line);
        Assert.NotNull(outcome.Objection);
        Assert.Same(before, Study);
        return outcome.Objection;
    }

    private static void Must(Outcome outcome) => Assert.True(outcome.IsWritten, outcome.Objection?.ToString());
}
