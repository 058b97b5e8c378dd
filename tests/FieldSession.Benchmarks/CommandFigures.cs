using System.Text;
using FieldSession.Store.Journaling;

namespace FieldSession.Benchmarks;

/// <summary>Whole commands of the native program, from its start to its end: report, export, import, merge, opening, archive.</summary>
/// <param name="program">The program.</param>
/// <param name="folder">Where files may lie; somebody else takes it away.</param>
/// <param name="isQuick">Whether large files are made a tenth as large, to try the command.</param>
internal sealed class CommandFigures(NativeProgram program, string folder, bool isQuick)
{
    private const int Times = 15;
    private const int FewTimes = 3;

    private int Large => isQuick ? 10 : 1;

    /// <summary>Measures them all.</summary>
    public IEnumerable<Figure> All()
    {
        Figure start = new(
            "start of the program alone (`--version`)",
            "ms",
            Stopwatches.Ms(Times, () => program.Run("--version")),
            "the system's loader; the runtime's start"
        );
        yield return start;
        foreach (
            Figure figure in OfTheDay(start.Median)
                .Concat(OfImport())
                .Concat(OfMerging())
                .Concat(OfOpening())
                .Concat(OfTheArchive(start.Median))
        )
        {
            yield return figure;
        }
    }

    private string At(string name) => Path.Combine(folder, name);

    private IEnumerable<Figure> OfTheDay(double floor)
    {
        program.Run("demo", "--replay", "--out", At("demo"));
        string study = At("demo/quillmere.study");
        yield return new Figure(
            "`report` of the demo day, Markdown and page",
            "ms",
            Stopwatches.Ms(Times, () => program.Run("report", study, "--out", At("report"))),
            "start of the program; drawing and template"
        )
        {
            Floor = floor,
        };
        yield return new Figure(
            "`export` of the demo day, all tables",
            "ms",
            Stopwatches.Ms(Times, () => program.Run("export", study, "--out", At("tables"))),
            "start of the program; a flush for each of two dozen files"
        )
        {
            Floor = floor,
        };
    }

    private IEnumerable<Figure> OfImport()
    {
        int rows = 1_000_000 / Large;
        string csv = At("day.csv");
        File.WriteAllBytes(csv, ReadingsSpeed.Csv(runs: 20, rows));
        double floor = Stopwatches.MedianMs(FewTimes, () => _ = Encoding.UTF8.GetString(File.ReadAllBytes(csv)).Split('\n').Length);
        yield return new Figure(
            $"`compare` of a CSV with {rows:#,0} readings",
            "ms",
            Stopwatches.Ms(FewTimes, () => program.Run("compare", csv, "--json")),
            "reading CSV field by field (the limit: the file split into lines in memory)"
        )
        {
            Floor = floor,
        };
        File.Delete(csv);
    }

    private IEnumerable<Figure> OfMerging()
    {
        foreach (int lines in new[] { 1_000, 50_000 / Large })
        {
            (string here, string there) = TwoLaptops(lines);
            double[] took = Stopwatches.Ms(
                lines == 1_000 ? Times : FewTimes,
                () => Copy(At("whole"), At("x")),
                () => program.Run("merge", here, there)
            );
            yield return new Figure(
                $"`merge` of two laptops, {lines:#,0} new lines each",
                "ms",
                took,
                "opening both; the second copy in LiteDB, 200 lines a transaction"
            );
        }
    }

    private IEnumerable<Figure> OfOpening()
    {
        foreach ((int readings, double? asked) in new (int, double?)[] { (1_000, null), (100_000, 2_000), (1_000_000 / Large, 15_000) })
        {
            string study = At($"large-{readings}.study");
            Scale.Make(study, readings);
            List<double> memory = [];
            double[] took = Stopwatches.Ms(readings > 100_000 ? FewTimes : Times, () => memory.Add(program.Run("enter", study)));
            byte[] text = File.ReadAllBytes(Path.ChangeExtension(study, ".journal"));
            double floor = Stopwatches.MedianMs(FewTimes, () => _ = System.Security.Cryptography.SHA256.HashData(text));
            yield return new Figure(
                $"a study of {readings:#,0} readings opened and closed (`enter`)",
                "ms",
                took,
                "folding every line (the limit: SHA-256 of its text, one core)"
            )
            {
                Asked = asked is null ? null : new Asked(asked.Value),
                Floor = floor,
            };
            yield return new Figure($"memory of that, {readings:#,0} readings", "MB", memory, "every line and reading is held")
            {
                Asked = asked is null ? null : new Asked(1_074),
            };
        }
    }

    private IEnumerable<Figure> OfTheArchive(double floor)
    {
        int studies = 1_000 / Large;
        Directory.CreateDirectory(At("archive"));
        for (int i = 0; i < studies; i++)
        {
            File.Copy(At("demo/quillmere.study"), At($"archive/{i}.study"));
            File.Copy(At("demo/quillmere.journal"), At($"archive/{i}.journal"));
        }

        double again = Stopwatches.Micros(() => program.Run("archive", At("archive"))) / 1000;
        yield return new Figure(
            $"`archive` of {studies:#,0} studies, each read again",
            "ms",
            [again],
            "reading and comparing each study; done once, then there is an index"
        );
        yield return new Figure(
            $"`archive` of {studies:#,0} studies with its index",
            "ms",
            Stopwatches.Ms(Times, () => program.Run("archive", At("archive"))),
            "a look at every file's size and time"
        )
        {
            Asked = new Asked(5_000),
            Floor = floor,
        };
    }

    private (string Here, string There) TwoLaptops(int lines)
    {
        Emptied(At("whole"));
        using (LargeStudy first = LargeStudy.Of(0))
        {
            using StudyFile begun = StudyFile.Create(At("whole/day.study"), TimeProvider.System);
            begun.AppendAll(first.Lines);
        }

        Copy(At("whole"), At("y"));
        foreach ((string name, string strand) in new[] { ("whole", "00000000000000aa"), ("y", "00000000000000bb") })
        {
            using StudyFile file = StudyFile.Open(At($"{name}/day.study"), TimeProvider.System);
            Logbook book = Logbook.Open(file, TimeProvider.System, strand);
            for (int i = 0; i < lines; i++)
            {
                _ = book.Write($"; act {i}");
            }
        }

        return (At("x/day.study"), At("y/day.study"));
    }

    private static void Copy(string from, string to)
    {
        Emptied(to);
        foreach (string file in Directory.GetFiles(from))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }
    }

    private static void Emptied(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (string old in Directory.GetFiles(folder))
        {
            File.Delete(old);
        }
    }
}
