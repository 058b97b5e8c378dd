using System.Diagnostics;

namespace FieldSession.Benchmarks;

/// <summary>Everything measured in one go, as the table of docs/benchmarks.md.</summary>
internal static class AllFigures
{
    /// <summary>The table is in the document behind this line.</summary>
    public const string Begin = "<!-- written by '-- all' from here -->";

    /// <summary>The table is in the document before this line.</summary>
    public const string End = "<!-- to here -->";

    private static string Document => Path.Combine("docs", "benchmarks.md");

    /// <summary>Measures, shows each row as it comes, and writes the table into the document.</summary>
    /// <param name="to">Where the rows are shown.</param>
    /// <param name="path">The native program; null: it is published from this source.</param>
    /// <param name="isQuick">Whether to try the command on a tenth of everything; nothing is written then.</param>
    public static void Run(TextWriter to, string? path, bool isQuick)
    {
        NativeProgram program = path is null ? NativeProgram.Published() : new NativeProgram(Path.GetFullPath(path));
        double? load = Machine.LoadNow();
        string folder = Directory.CreateTempSubdirectory("fieldsession-figures-").FullName;
        List<string> rows = [];
        try
        {
            IEnumerable<Figure> figures = TerminalFigures
                .Of(program, isQuick ? 5 : 60)
                .Concat(InThisProcess(isQuick))
                .Concat(new CommandFigures(program, folder, isQuick).All())
                .Concat(new RecordingFigures(program, folder, isQuick).All());
            foreach (Figure figure in figures)
            {
                rows.Add(figure.Row);
                to.WriteLine(figure.Row);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        string said = Machine.InWords(Commit(), load);
        to.WriteLine(said);
        if (!isQuick)
        {
            Write([said, "", .. Figure.Head, .. rows]);
        }
    }

    private static IEnumerable<Figure> InThisProcess(bool isQuick)
    {
        foreach ((int pauseMs, string words) in new[] { (5, "5 ms after the last"), (0, "without a pause") })
        {
            (double[] bare, double[] append) = Safety.Measured(isQuick ? 100 : 1000, pauseMs);
            double floor = bare[bare.Length / 2] / 1000;
            Asked? asked = pauseMs > 0 ? new Asked(1.5 * floor, 3 * bare[bare.Length * 99 / 100] / 1000) : null;
            yield return new Figure(
                $"an act on the disk, {words}",
                "ms",
                [.. append.Select(micros => micros / 1000)],
                "the disk's flush (a bare write and flush of the same bytes, in turn)"
            )
            {
                Asked = asked,
                Floor = floor,
            };
        }

        foreach ((string size, double? asked) in new (string, double?)[] { ("14 x 12, 3 codes", 2), ("1000 x 40", null) })
        {
            ComparisonSpeed speed = new() { Size = size };
            speed.Draw();
            // until the code is compiled for speed
            _ = Stopwatches.Ms(100, () => speed.Compare());
            yield return new Figure(
                $"the whole comparison, {size}",
                "ms",
                Stopwatches.Ms(isQuick ? 20 : 200, () => speed.Compare()),
                "arithmetic"
            )
            {
                Asked = asked is null ? null : new Asked(asked.Value),
            };
        }
    }

    private static void Write(IEnumerable<string> table)
    {
        string text = File.ReadAllText(Document);
        int from = text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = text.IndexOf(End, StringComparison.Ordinal);
        File.WriteAllText(Document, $"{text[..from]}\n{string.Join('\n', table)}\n{text[to..]}");
    }

    private static string Commit()
    {
        using Process git = Process.Start(new ProcessStartInfo("git", ["rev-parse", "--short", "HEAD"]) { RedirectStandardOutput = true })!;
        return git.StandardOutput.ReadToEnd().Trim();
    }
}
