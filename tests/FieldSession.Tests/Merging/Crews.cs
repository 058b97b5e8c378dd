using System.Reflection;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Tests.Journal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Merging;

/// <summary>Laptops in memory that got one study handed over, type by lot, and merge by lot.</summary>
internal sealed class Crews
{
    private static readonly string[] Acts =
    [
        "calibration before 94.0",
        "calibration after 93.9",
        "weather air=6 road=5 wind=2 surface=dry",
        "run 417",
        "run 862",
        "run 417",
        "run 862",
        "5860",
        "6163",
        "5961 t van",
        "60",
        "58-62",
        "m",
        "71",
        "t",
        "w",
        "u",
        "u",
        "; hollow",
        "d",
        "end",
        "seg 2",
        "confirm 1.1",
        "correct 1.1 57-59",
        "correct 2.2 61-63",
        "shift 1.1 +1",
        "flag 1.1 r",
        "flag 2.1 n grit",
        "amend margin_db=1.5 because asked",
        "amend margin_db=2 because else",
        "rate Tam roar 6.25",
        "ratings closed",
        "settle 1 first because ours",
        "settle 1 second because theirs",
        "settle 2 both because fine",
        "predict Ro 862 3",
        "prediction Tam 417 2",
        "leg day=1 car=X code=417 km=104 kwh=18.8 t0=5 t1=6 driver=Ro",
        "leg day=1 car=Y code=862 km=104 kwh=19.3 t0=5 t1=6 driver=Tam",
        "leg 1 w gusts",
        "trials 862 417 n=10",
        "slip Ilse",
        "choose Tam first",
        "choice Ro second unseen",
        "check pressure 230 231 250 249 at=12",
        "override calibration-before left at home",
        "rerun bracket 1 lorry",
        "mark",
        "chain recorder at=headrest",
        "extra c=74.2 rec=take12",
        "ring open because asked",
        "fill 1.2 60-62",
        "end puncture",
        "flag 1.1 t",
    ];

    // what hangs on whose laptop it is that reads
    private static readonly string[] OfOneLaptop =
    [
        nameof(Study.Undoables),
        nameof(Study.Undone),
        nameof(Study.Hand),
        nameof(Study.OtherHands),
        nameof(Study.FirstStrand),
    ];

    private static readonly PropertyInfo[] TellingMembers =
    [
        .. typeof(Study)
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(member => member.CanWrite && !OfOneLaptop.Contains(member.Name)),
    ];

    // what keys take back is written below, about lines that are there
    private static readonly Entry[] Entries = [.. OneOfEachKind.All.Where(entry => entry is not (LettersTakenBack or ActUndone))];

    private readonly Random _lot;

    public Crews(int seed, int laptops)
    {
        _lot = new Random(seed);
        ADay first = new(Plan);
        if (_lot.Next(2) == 0)
        {
            first.Ready();
        }

        if (_lot.Next(3) == 0)
        {
            // one laptop alone drives a bracket again, before the study is handed over
            Drive(first.Book, "417", "862", "862", "417");
            first.Book.Write("rerun bracket 1 lorry");
        }

        for (int i = 0; i < laptops; i++)
        {
            // the first laptop goes on in its strand; clocks differ by some seconds
            Laptops.Add(new Laptop(i == 0 ? "00000000000000aa" : $"00000000000000b{i}", [.. first.Journal.Lines], new StoppedClock()));
            Laptops[i].Clock.Advance(TimeSpan.FromSeconds(_lot.Next(90)));
        }
    }

    public static Plan Plan =>
        ADay.ShortPlan with
        {
            Order = [new Place(0), new Place(1), new Place(1), new Place(0)],
            Attributes = ["roar"],
        };

    public List<Laptop> Laptops { get; } = [];

    /// <summary>Lets laptops type, and now and then merge.</summary>
    public Crews Type(int acts)
    {
        for (int i = 0; i < acts; i++)
        {
            Laptop laptop = Laptops[_lot.Next(Laptops.Count)];
            if (_lot.Next(25) == 0)
            {
                laptop.Take(Laptops[_lot.Next(Laptops.Count)].Lines);
            }

            laptop.Clock.Advance(TimeSpan.FromSeconds(_lot.Next(60)));
            if (_lot.Next(4) == 0)
            {
                laptop.Book.Write(Entries[_lot.Next(Entries.Length)]);
            }
            else
            {
                laptop.Book.Write(Acts[_lot.Next(Acts.Length)]);
            }

            if (
                _lot.Next(3) == 0
                && laptop.Book.LastFacts is [.., { Line: { Kind: "spoilt" or "clean" or "missed" or "undo" or "speaker" } last }]
                && last.Strand == laptop.Strand
            )
            {
                // the key was a letter of a word
                laptop.Book.Write(new LettersTakenBack(last.Number));
            }
        }

        return this;
    }

    /// <summary>
    /// One laptop takes what the others wrote, brings the day to its end and opens ring and key, marks and all. The others know nothing of
    /// it, and type on.
    /// </summary>
    public Crews Evening()
    {
        Laptop last = Laptops[_lot.Next(Laptops.Count)];
        Laptops.ForEach(other => last.Take(other.Lines));
        Logbook book = last.Book;
        book.Write("end puncture");
        Enumerable.Range(1, Math.Max(1, book.Study.Conflicts.Count)).ToList().ForEach(n => book.Write($"settle {n} first because ours"));
        book.Write("calibration before 94.0");
        Drive(book, [.. book.Study.Codes.Select(code => code.Digits)]);
        OpenDoubts.In(book.Study).ToList().ForEach(doubt => book.Write($"confirm {doubt.Place}"));
        book.Write("calibration after 94.0");
        book.Write(new RingOpened("the owner asks"));
        SpecCode[] codes = [.. book.Study.DrivenCodes];
        Plan.Crew.ToList().ForEach(member => book.Write($"predict {member.Name} feature={codes.FirstOrDefault()} sure=3"));
        book.Write(
            new KeyOpened(
                [.. book.Study.Codes.Select((code, place) => new CodedSpec(code, $"SPEC {place}", $"MARK {place}"))],
                null,
                null,
                false,
                [.. codes.Select(code => new MarkRead(code, "misread"))],
                ["Ilse", "Ro"]
            )
        );
        book.Write(
            new MarksReadAgain(
                [.. codes.Select(code => new MarkRead(code, $"MARK {book.Study.Codes.ToList().IndexOf(code)}"))],
                ["Ilse", "Ro"],
                []
            )
        );
        return this;
    }

    private static void Drive(Logbook book, params string[] codes)
    {
        foreach (string line in codes.SelectMany(code => new[] { $"run {code}", "5860", "6163", "71" }))
        {
            book.Write(line);
        }
    }

    /// <summary>All lines of two journals, those of the first in front, as a merge puts them.</summary>
    public static List<Line> Merged(IReadOnlyList<Line> into, IReadOnlyList<Line> other)
    {
        HashSet<string> known = [.. into.Select(line => line.Hash)];
        return [.. into, .. other.Where(line => known.Add(line.Hash))];
    }

    /// <summary>Everything that a study tells, as text.</summary>
    public static string Told(IReadOnlyList<Line> lines)
    {
        Study study = Logbook.Fold(lines);
        return string.Join('\n', TellingMembers.Select(member => $"{member.Name}: {EverythingTold.By(member.GetValue(study))}"));
    }

    internal sealed class Laptop
    {
        public Laptop(string strand, List<Line> lines, StoppedClock clock)
        {
            (Strand, Clock) = (strand, clock);
            Book = Logbook.Open(new MemoryJournal(lines), clock, strand);
        }

        public StoppedClock Clock { get; }

        public Logbook Book { get; private set; }

        public IReadOnlyList<Line> Lines => Book.Lines;

        public string Strand { get; }

        public void Take(IReadOnlyList<Line> other) => Book = Logbook.Open(new MemoryJournal(Merged(Lines, other)), Clock, Strand);
    }
}
