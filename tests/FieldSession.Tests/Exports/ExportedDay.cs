using System.Globalization;
using System.Text;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

/// <summary>A day and the folder that it was exported into.</summary>
internal sealed class ExportedDay : IDisposable
{
    private readonly Folder _folder = new();

    public ExportedDay(ADay day)
    {
        Day = day;
        Export();
    }

    public ADay Day { get; }

    public ExportOutcome Outcome { get; private set; } = new([], []);

    public string[] Names => _folder.Names;

    public string Path(string name) => _folder[name];

    public string Text(string name) => File.ReadAllText(Path(name));

    public List<Dictionary<string, string>> Rows(string table) => Rfc4180.Rows(Text(table + ".csv"));

    public ExportedDay Export()
    {
        Outcome = ExportFolder.Write(_folder.Path, ExportSource.Of(Day.Book), CancellationToken.None);
        return this;
    }

    /// <summary>What 'compare STUDY --json' prints, without the main segments: a file of readings names none.</summary>
    public string StudyCompared() => Compared(StudyTerms.Of(Day.Study) with { MainSegments = null }, StudyVerdicts.OfReadings);

    /// <summary>The same with the lines of meter, ear and worth, which a file of readings alone does not have.</summary>
    public string StudyComparedWithItsVerdicts() => Compared(StudyTerms.Of(Day.Study), _ => ExportSource.Of(Day.Book).Verdicts);

    private string Compared(ComparisonTerms terms, Func<Comparison, IReadOnlyList<VerdictLine>> verdicts)
    {
        Comparison comparison = BlindComparison.InFull(StudyReadings.Of(Day.Study), terms);
        return ComparisonJson.Of(comparison, null, verdicts(comparison)) + Environment.NewLine;
    }

    /// <summary>What 'compare readings.csv --json' prints, with the study's reference and margins.</summary>
    public string CsvCompared()
    {
        ComparisonTerms terms = StudyTerms.Of(Day.Study);
        using StringWriter output = new();
        using StringWriter error = new();
        CompareWords words = new(Path("readings.csv"), terms.Reference, $"{terms.MarginDb}", $"{terms.ImpactMarginDb}", Json: true);
        int code = new CompareCommand(path => throw new InvalidOperationException($"{path} is no study")).Run(output, error, words);
        Assert.True(code == 0, error.ToString());
        return output.ToString();
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>The demo day as its files in the repository tell it, typed line by line at its times.</summary>
    public static ADay Demo()
    {
        const string At = "# at ";
        string folder = System.IO.Path.Combine(Repository.Root, "demo", "quillmere");
        ADay day = new(PlanFolder.Read(folder).Plan);
        foreach (string line in File.ReadAllLines(System.IO.Path.Combine(folder, "day.txt")))
        {
            if (line.StartsWith(At, StringComparison.Ordinal))
            {
                day.Clock.Now = DateTimeOffset.Parse(line[At.Length..] + "Z", CultureInfo.InvariantCulture);
            }
            else if (!EntryText.IsPassedOver(line))
            {
                day.Typed(line);
            }
        }

        return day;
    }

    /// <summary>Everything that makes a day untidy; made up. Two sessions, the first void.</summary>
    public static ADay Untidy()
    {
        ADay day = AfterAVoidSession();
        day.Typed("calibration after 93.2", "calibration before 94");
        Drive(day, "417", "5355", "6062", "6265", "699", "6468", "6166", "732", "6971", "6367", "5861", "6569");
        Drive(day, "862", "5457", "6164", "6466", "713", "6568", "6266", "744", "7072", "6264", "5861", "6671 e");
        Drive(day, "417", "5356", "6062", "6365", "704", "6468", "6066", "731", "6971", "6366", "5861", "6669");
        return day.Typed("calibration after 93.9");
    }

    private static ADay AfterAVoidSession()
    {
        ADay day = new ADay(ARoute.Plan).Ready();
        Drive(
            day,
            "417",
            "5355",
            "m",
            "seg 5",
            "6468",
            "seg 3",
            "6265",
            "699",
            "seg 6",
            "6166",
            "732",
            "7169",
            "6367 t van, \"wide\"",
            "5861",
            "6569"
        );
        Drive(
            day,
            "862",
            "5457",
            "6369 n",
            "6466",
            "713",
            "6568",
            "seg 5",
            "6567",
            "6266",
            "744",
            "73.1-76.4",
            "; late hum",
            "flag 2.3 w",
            "6264",
            "end"
        );
        return day;
    }

    /// <summary>The codes opened as two specs whose names are nowhere else.</summary>
    public static KeyOpened Opened(ADay day) =>
        new(
            [new CodedSpec(new SpecCode("417"), "ZANDERGRIP"), new CodedSpec(new SpecCode("862"), "=QUORNWALL")],
            "ZANDERGRIP",
            null,
            null,
            [new MarkRead(new SpecCode("417"), "ZANDERGRIP"), new MarkRead(new SpecCode("862"), "=QUORNWALL")],
            [.. day.Study.Plan!.Crew.Select(member => member.Name)]
        );

    public static string WithoutHashes(string descriptor)
    {
        StringBuilder masked = new();
        foreach (string line in descriptor.Split('\n'))
        {
            string name = line.TrimStart();
            bool isMasked = name.StartsWith("\"hash\"", StringComparison.Ordinal) || name.StartsWith("\"bytes\"", StringComparison.Ordinal);
            masked.Append(isMasked ? line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)] + " ..." : line).Append('\n');
        }

        return masked.ToString().TrimEnd('\n') + "\n";
    }

    private static void Drive(ADay day, string code, params string[] lines)
    {
        day.Typed($"run {code}");
        foreach (string line in lines)
        {
            day.Clock.Advance(TimeSpan.FromSeconds(97.5));
            day.Typed(line);
        }

        day.Clock.Advance(TimeSpan.FromMinutes(7));
    }
}
