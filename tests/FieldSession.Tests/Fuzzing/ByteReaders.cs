using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Reporting;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store;
using FieldSession.Store.Archiving;
using FieldSession.Store.Exports.Html;
using FieldSession.Store.Journaling;
using FieldSession.Store.Planning;
using FieldSession.Store.Readings;
using FieldSession.Store.Sealing;
using FieldSession.Terminal;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Journal;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Fuzzing;

/// <summary>Every reader of bytes that the program has.</summary>
internal static class ByteReaders
{
    private static readonly Lazy<Report> SmallReport = new(() => AReport.Of(name => name));
    private static readonly Lazy<MemoryDisk> Sound = new(() =>
        CrashDay.Killed([.. new ADay().Ready().Typed("run 417", "5860", "6365", "714").Book.Lines], merged: 4)
    );

    private static readonly Lazy<(byte[][] Readings, byte[] Index, byte[] Codes)> OfADay = new(FilesOfADay);

    /// <summary>All of them.</summary>
    public static ImmutableArray<ByteReader> All =>
        [
            new(
                "plan",
                16,
                [Demo("plan.toml"), Demo("plan.toml", "dunmarrow"), Utf8(AWholeDay.Plan)],
                bytes => IsPlan(bytes, Demo("route.csv"))
            ),
            new(
                "route",
                12,
                [Demo("route.csv"), Demo("route.csv", "dunmarrow"), Utf8(AWholeDay.Route)],
                bytes => IsPlan(Utf8(AWholeDay.Plan), bytes)
            ),
            new("readings", 12, [.. OfADay.Value.Readings], bytes => IsWhole(ReadingsCsv.Read(new MemoryStream(bytes), "day.csv"))),
            new(
                "legs",
                10,
                [Utf8("day,car,code,distance_km,energy_kwh\n1,X,417,200,35.8\n1,Y,862,200,37.0\n")],
                bytes => IsWhole(LegsCsv.Read(new MemoryStream(bytes), "legs.csv", ADay.ShortPlan))
            ),
            new(
                "archive",
                8,
                [Utf8("day,cls,nu_run,s_run,kbar,nu_e,s_e\n2026-02-03,steady,10,0.5,3,40,0.6\n2026-02-03,impact,4,0.4,2.5,12,0.7\n")],
                bytes => IsWhole(ArchiveCsv.Read(new MemoryStream(bytes), "archive.csv"))
            ),
            new("archive index", 6, [OfADay.Value.Index], bytes => ArchiveIndex.Of(bytes).Count > 0),
            new("key file", 8, [AKeyFile()], IsKeyFile),
            new("contents of a key", 4, [KeyPlaintext.Of(KeyFolder.Key)], bytes => KeyPlaintext.Parse(bytes) is not null),
            new(
                "public codes",
                6,
                [OfADay.Value.Codes],
                bytes => InUtf8(bytes, text => PublicCodesFile.Of(text) is var read && read.Codes is null == read.Refusal is not null)
            ),
            new(
                "specs",
                6,
                [Utf8("STANDARD\nSTIFFENED\n")],
                bytes => InUtf8(bytes, text => SpecList.Parse(text, 2, out Objection? no) is null == no is not null)
            ),
            new(
                "own keys",
                3,
                [Utf8("flag T = f\nspoilt t = x\n")],
                bytes => InUtf8(bytes, text => OwnKeys.Of(KeyTable.Standard, text.Split('\n')).Keys is not null)
            ),
            new(
                "habits",
                2,
                [Utf8("decimal comma\nclock 12\n")],
                bytes => InUtf8(bytes, text => Habits.Of(text.Split('\n')).Habits is not null)
            ),
            new("entry with a right hash", 9, [.. OneOfEachKind.All.Select(AsBytes)], IsEntry),
            new("study text", 1, [Sound.Value[CrashDay.Paths.Journal]], bytes => OpensOrStays(CrashDay.Paths.Journal, bytes)),
            new("LiteDB file", 1, [Sound.Value[CrashDay.Paths.Study]], bytes => OpensOrStays(CrashDay.Paths.Study, bytes)),
            new("log of the LiteDB file", 1, [Sound.Value[CrashDay.Paths.Log]], bytes => OpensOrStays(CrashDay.Paths.Log, bytes)),
            new(
                "template",
                1,
                [Utf8(ReportTemplate.DefaultText), Utf8("<p>{{ title }}</p>{% for s in sections %}{{ s.title }}{% endfor %}")],
                IsTemplate
            ),
        ];

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Demo(string file, string name = "quillmere") =>
        File.ReadAllBytes(Path.Combine(Repository.Root, "demo", name, file));

    private static (byte[][] Readings, byte[] Index, byte[] Codes) FilesOfADay()
    {
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
        day.Must(0, ["export", day.Study, "--out", day.Here("tables")]);
        day.Must(0, ["archive", day.Here(".")]);
        day.Must(
            0,
            ["seal", day.Here("plan"), "--specs", day.Here("specs.txt"), "--key", day.Here("p.key"), "--public", day.Here("p.codes")]
        );
        byte[] readings = File.ReadAllBytes(day.Here("tables/readings.csv"));
        return ([readings], File.ReadAllBytes(day.Here(ArchiveIndex.FileName)), File.ReadAllBytes(day.Here("p.codes")));
    }

    private static byte[] AKeyFile()
    {
        using KeyFolder folder = new();
        return File.ReadAllBytes(folder.Seal("a.key", KeyFolder.Key));
    }

    private static byte[] AsBytes(Entry entry) =>
        [.. Utf8(EntryKinds.Of(entry).Name), (byte)'\n', .. JsonSerializer.SerializeToUtf8Bytes(entry, EntryKinds.Of(entry).Shape)];

    private static bool InUtf8(byte[] bytes, Func<string, bool> read)
    {
        try
        {
            bool isKept = read(SmallText.Of("f", bytes));
            Assert.True(isKept);
            return true;
        }
        catch (TextRefusedException)
        {
            return false;
        }
    }

    private static bool IsPlan(byte[] plan, byte[] route)
    {
        bool isTaken = false;
        _ = InUtf8(
            plan,
            toml =>
                InUtf8(
                    route,
                    csv =>
                    {
                        PlanReading reading = PlanFolder.Parse(toml, csv, "fuzz");
                        isTaken = reading.Plan is { } read && ComesBack(read);
                        return reading.Plan is null == reading.Problems.Count > 0;
                    }
                ) || true
        );
        return isTaken;
    }

    // what was taken as a plan can be started and read again from the disk
    private static bool ComesBack(Plan plan)
    {
        MemoryJournal journal = new();
        Outcome outcome = Logbook.Open(journal, new StoppedClock(), "00000000000000aa").Write(new PlanMade(plan));
        Assert.True(outcome.IsWritten || outcome.Objection is not null);
        Assert.All(journal.Lines, line => Assert.NotNull(Logbook.Fold([Line.Parse(line.ToString())!]).Plan));
        return true;
    }

    private static bool IsWhole<T>(FileRead<T> read)
        where T : class
    {
        Assert.True(read.Content is null == read.ProblemLines().Any());
        return read.Content is not null;
    }

    private static bool IsKeyFile(byte[] bytes)
    {
        bool isTaken = KeyEnvelopeText.Parse(bytes, out KeyOpening? refusal) is not null;
        Assert.True(isTaken == refusal is null);
        Assert.DoesNotContain("STIFF", refusal?.Words ?? "", StringComparison.Ordinal);
        return isTaken;
    }

    private static bool IsEntry(byte[] bytes)
    {
        int end = Array.IndexOf(bytes, (byte)'\n');
        List<Line> day = [.. Sound.Value is { } disk ? TextCopy.Read(disk[CrashDay.Paths.Journal]).Valid : []];
        try
        {
            using JsonDocument body = JsonDocument.Parse(bytes.AsMemory(Math.Max(end, 0)));
            Line forged = Line.Make(
                day[^1].Number + 1,
                day[^1].Hash,
                day[^1].At,
                day[^1].Strand,
                Encoding.UTF8.GetString(bytes, 0, Math.Max(end, 0)),
                1,
                body.RootElement.WriteTo
            );
            day.Add(Line.Parse(forged.ToString()) ?? forged);
            return Logbook.Open(new MemoryJournal(day), new StoppedClock(), "00000000000000aa").Lines.Count == day.Count;
        }
        catch (InvalidDataException refusal)
        {
            Assert.StartsWith($"line {day[^1].Number} ", refusal.Message, StringComparison.Ordinal);
            return false;
        }
        catch (Exception none) when (none is JsonException or InvalidOperationException or ArgumentException)
        {
            // no JSON, or no kind of entry: not the reader's affair
            return false;
        }
    }

    private static bool OpensOrStays(string path, byte[] bytes)
    {
        // a page number that was turned leads far beyond the end of the file
        MemoryDisk disk = Sound.Value.Copy();
        disk.Room = 64 << 20;
        disk[path] = bytes;
        byte[] text = disk[CrashDay.Paths.Journal];
        try
        {
            using StudyFile study = CrashDay.Open(disk);
            return study.Lines.Count > 0;
        }
        catch (StudyFileException refusal)
        {
            Assert.Contains("Nothing was", refusal.Message, StringComparison.Ordinal);
            Assert.Equal(text, disk[CrashDay.Paths.Journal]);
            return false;
        }
    }

    private static bool IsTemplate(byte[] bytes)
    {
        try
        {
            return ReportHtml.Of(SmallReport.Value, ReportTemplate.Of(SmallText.Of("f", bytes), "page.html")).Length >= 0;
        }
        catch (Exception refused) when (refused is TemplateRefusedException or TextRefusedException)
        {
            return false;
        }
    }
}
