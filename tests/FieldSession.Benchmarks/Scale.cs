using System.Diagnostics;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Store.Journaling;

namespace FieldSession.Benchmarks;

/// <summary>Times opening, and an act, in a small study and in one far larger than any day.</summary>
internal static class Scale
{
    private const int Acts = 400;

    public static void Print(TextWriter to, int readings)
    {
        string folder = Directory.CreateTempSubdirectory("fieldsession-scale-").FullName;
        try
        {
            Measure(to, Path.Combine(folder, "small.study"), 100);
            Measure(to, Path.Combine(folder, "large.study"), readings);
            to.WriteLine($"highest memory of this process: {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Opens a study that is there, in a process of its own, for the memory that opening takes.</summary>
    public static void Open(TextWriter to, string path)
    {
        Stopwatch watch = Stopwatch.StartNew();
        using StudyFile file = StudyFile.Open(path, TimeProvider.System);
        TimeSpan read = watch.Elapsed;
        Logbook book = Logbook.Open(file, TimeProvider.System, "00000000000000aa");
        to.WriteLine(
            $"opened {book.Lines.Count} lines in {watch.Elapsed.TotalMilliseconds:0} ms (files {read.TotalMilliseconds:0} ms), "
                + $"highest memory {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB, heap "
                + $"{GC.GetTotalMemory(forceFullCollection: true) >> 20} MiB"
        );
    }

    /// <summary>Writes a study for <see cref="Open"/>.</summary>
    public static void Make(string path, int readings)
    {
        using (LargeStudy study = LargeStudy.Of(readings))
        {
            using StreamWriter text = new(Path.ChangeExtension(path, ".journal")) { NewLine = "\n" };
            foreach (Line line in study.Lines)
            {
                text.WriteLine(line);
            }
        }

        using StudyFile made = StudyFile.Open(path, TimeProvider.System);
    }

    private static void Measure(TextWriter to, string path, int readings)
    {
        Make(path, readings);
        Stopwatch watch = Stopwatch.StartNew();
        using StudyFile file = StudyFile.Open(path, TimeProvider.System);
        Logbook book = Logbook.Open(file, TimeProvider.System, "00000000000000aa");
        to.WriteLine($"{readings} readings: opened in {watch.Elapsed.TotalMilliseconds:0} ms");

        double[] micros = [.. Enumerable.Range(0, Acts).Select(_ => Stopwatches.Micros(() => Act(book))).Order()];
        to.WriteLine($"{readings} readings: an act is written in {micros[Acts / 2]:0} us (median), {micros[Acts * 99 / 100]:0} us (p99)");
        double[] compared =
        [
            .. Enumerable
                .Range(0, 5)
                .Select(_ => Stopwatches.Micros(() => BlindComparison.Of(StudyReadings.Of(book.Study), new ComparisonTerms("417"))))
                .Order(),
        ];
        to.WriteLine($"{readings} readings: the whole day is compared in {compared[2] / 1000:0.0} ms");
    }

    private static void Act(Logbook book)
    {
        Outcome outcome = book.Study.RunOn is null ? book.Write("run 417") : book.Write("58-60");
        if (!outcome.IsWritten)
        {
            throw new InvalidOperationException($"{outcome.Objection} {outcome.NotSavedBecause}");
        }
    }
}
