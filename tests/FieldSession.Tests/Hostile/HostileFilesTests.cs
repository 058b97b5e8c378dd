using System.Text;
using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Store.Planning;
using FieldSession.Store.Readings;
using FieldSession.Store.Sealing;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Journal;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Hostile;

/// <summary>
/// Files that somebody broke, at random, or made to break the program. FIELDSESSION_HOSTILE_FILES sets how many of each are
/// tried instead of the few hundred of every build.
/// </summary>
public sealed class HostileFilesTests
{
    private static int Files => int.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_HOSTILE_FILES"), out int more) ? more : 300;

    [Fact]
    public void A_plan_is_taken_whole_or_refused_with_a_reason()
    {
        string folder = Path.Combine(Repository.Root, "demo", "quillmere");
        string plan = File.ReadAllText(Path.Combine(folder, "plan.toml"));
        string route = File.ReadAllText(Path.Combine(folder, "route.csv"));
        for (int seed = 0; seed < Files; seed++)
        {
            Rubbish rubbish = new(new Random(seed));
            PlanReading reading = PlanFolder.Parse(
                seed % 3 == 1 ? plan : rubbish.Edited(plan),
                seed % 3 == 0 ? route : rubbish.Edited(route),
                "quillmere"
            );

            Assert.True(reading.Plan is null == reading.Problems.Count > 0, $"seed {seed}");
        }
    }

    [Fact]
    public void Readings_are_taken_whole_or_refused_with_a_reason()
    {
        byte[] csv = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "References", "cases", "01-aba-wholedB", "data.csv"));
        for (int seed = 0; seed < Files; seed++)
        {
            using MemoryStream edited = new(new Rubbish(new Random(seed)).Edited(csv));
            FileRead<MeasuredDay> read = ReadingsCsv.Read(edited, "day.csv");

            Assert.True(read.Content is null == read.ProblemLines().Any(), $"seed {seed}");
        }
    }

    [Fact]
    public void A_key_file_opens_or_is_refused_with_a_reason_that_tells_nothing()
    {
        using KeyFolder folder = new();
        byte[] whole = File.ReadAllBytes(folder.Seal("a.key", KeyFolder.Key));
        for (int seed = 0; seed < Files; seed++)
        {
            KeyOpening opening = folder.OpenBytes(new Rubbish(new Random(seed)).Edited(whole));

            Assert.True(opening.Key is null == opening.Fault is not null, $"seed {seed}");
            Assert.DoesNotContain("STIFF", opening.Words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_study_with_broken_files_opens_whole_or_is_refused_and_stays_as_it_is()
    {
        List<Line> lines = [.. new ADay().Ready().Typed("run 417", "5860", "6365", "714").Book.Lines];
        MemoryDisk sound = CrashDay.Killed(lines, merged: 4);
        for (int seed = 0; seed < Files; seed++)
        {
            Rubbish rubbish = new(new Random(seed));
            MemoryDisk disk = sound.Copy();
            disk[CrashDay.Paths.Journal] = rubbish.Edited(disk[CrashDay.Paths.Journal]);
            disk[CrashDay.Paths.Study] = seed % 2 == 0 ? disk[CrashDay.Paths.Study] : rubbish.Edited(disk[CrashDay.Paths.Study]);
            AssertOpensOrStays(disk, lines, $"seed {seed}");
        }
    }

    [Fact]
    public void Entries_made_by_another_hand_with_right_hashes_are_read_or_refused_by_their_line()
    {
        List<Line> day = [.. new ADay().Ready().Typed("run 417", "5860").Book.Lines];
        string[] bodies = [.. OneOfEachKind.All.Select(entry => JsonSerializer.Serialize(entry, EntryKinds.Of(entry).Shape))];
        string[] kinds = [.. OneOfEachKind.All.Select(entry => EntryKinds.Of(entry).Name)];
        for (int seed = 0; seed < Files * 10; seed++)
        {
            Random chance = new(seed);
            int kind = chance.Next(kinds.Length);
            if (Forged(day[^1], kinds[kind], new Rubbish(chance).Edited(bodies[kind])) is { } forged)
            {
                AssertReadOrRefused([.. day, forged], $"seed {seed}: {forged}");
            }
        }
    }

    private static void AssertOpensOrStays(MemoryDisk disk, List<Line> lines, string what)
    {
        byte[] text = disk[CrashDay.Paths.Journal];
        try
        {
            using StudyFile study = CrashDay.Open(disk);
            Assert.True(lines.Take(study.Lines.Count).SequenceEqual(study.Lines), what);
        }
        catch (StudyFileException refusal)
        {
            Assert.Contains("Nothing was", refusal.Message, StringComparison.Ordinal);
            Assert.Equal(text, disk[CrashDay.Paths.Journal]);
        }
    }

    private static void AssertReadOrRefused(List<Line> lines, string what)
    {
        try
        {
            Logbook book = Logbook.Open(new MemoryJournal(lines), new StoppedClock(), "00000000000000aa");
            Assert.Equal(lines.Count, book.Lines.Count);
        }
        catch (InvalidDataException refusal)
        {
            Assert.True(refusal.Message.StartsWith($"line {lines[^1].Number} ", StringComparison.Ordinal), $"{what}: {refusal.Message}");
        }
    }

    // null where the edited body is no JSON any more
    private static Line? Forged(Line last, string kind, string body)
    {
        try
        {
            byte[] bytes = Encoding.UTF8.GetBytes(body);
            using JsonDocument document = JsonDocument.Parse(bytes);
            return Line.Make(last.Number + 1, last.Hash, last.At, last.Strand, kind, 1, document.RootElement.WriteTo);
        }
        catch (Exception none) when (none is JsonException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }
}
