using System.Text;
using FieldSession.Journal;
using FieldSession.Store.Journaling;

namespace FieldSession.Benchmarks;

/// <summary>
/// What safety costs: an append, which is acknowledged when it is on the disk, beside a bare write and flush of the same bytes.
/// </summary>
internal static class Safety
{
    private const int WarmUp = 200;

    /// <summary>Prints both, interleaved in this process on the same disk.</summary>
    /// <param name="to">Where the table goes.</param>
    /// <param name="lines">How many of each.</param>
    /// <param name="pauseMs">Pause after each pair, ms: nobody types without a pause.</param>
    public static void Print(TextWriter to, int lines, int pauseMs)
    {
        (double[] bare, double[] append) = Measured(lines, pauseMs);
        to.WriteLine($"{lines} of each, interleaved, {pauseMs} ms apart, us");
        to.WriteLine("| | p50 | p99 | max |");
        to.WriteLine("| --- | --- | --- | --- |");
        to.WriteLine($"| bare write + flush | {At(bare, 0.5):0} | {At(bare, 0.99):0} | {bare[^1]:0} |");
        to.WriteLine($"| append, acknowledged | {At(append, 0.5):0} | {At(append, 0.99):0} | {append[^1]:0} |");
        to.WriteLine($"| ratio | {At(append, 0.5) / At(bare, 0.5):0.00} | {At(append, 0.99) / At(bare, 0.99):0.00} | |");
    }

    /// <summary>Microseconds of both, interleaved in this process on the same disk, each from the shortest to the longest.</summary>
    public static (double[] Bare, double[] Append) Measured(int lines, int pauseMs)
    {
        string folder = Directory.CreateTempSubdirectory("fieldsession-safety-").FullName;
        try
        {
            return Measure(folder, lines, pauseMs);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (double[] Bare, double[] Append) Measure(string folder, int lines, int pauseMs)
    {
        using FileStream plain = new(Path.Combine(folder, "bare"), FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        using StudyFile study = StudyFile.Create(Path.Combine(folder, "day.study"), TimeProvider.System);
        List<double> bare = [];
        List<double> append = [];
        Line? last = null;
        for (int i = 0; i < lines + WarmUp; i++)
        {
            Line line = After(last);
            byte[] bytes = Encoding.UTF8.GetBytes($"{line}\n");
            Action bareWrite = () =>
            {
                plain.Write(bytes);
                plain.Flush(flushToDisk: true);
            };
            // each goes first as often as the other
            (double first, double second) =
                i % 2 == 0
                    ? (Stopwatches.Micros(bareWrite), Stopwatches.Micros(() => study.Append(line)))
                    : (Stopwatches.Micros(() => study.Append(line)), Stopwatches.Micros(bareWrite));
            bare.Add(i % 2 == 0 ? first : second);
            append.Add(i % 2 == 0 ? second : first);
            last = line;
            Thread.Sleep(pauseMs);
        }

        return ([.. bare.Skip(WarmUp).Order()], [.. append.Skip(WarmUp).Order()]);
    }

    private static Line After(Line? last) =>
        Line.Make(
            (last?.Number ?? 0) + 1,
            last?.Hash ?? Line.NoHash,
            DateTimeOffset.UtcNow,
            "00000000000000aa",
            "reading",
            1,
            body =>
            {
                body.WriteStartObject();
                body.WriteString("levels", "58-60");
                body.WriteEndObject();
            }
        );

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];
}
