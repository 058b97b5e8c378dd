using System.Diagnostics;
using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>Times warm comparisons of a usual and of a very large day.</summary>
internal static class Speed
{
    public static void Print(TextWriter to)
    {
        Time(to, "14 segments x 12 runs, 3 codes", new InventedDay("ABCCBAABCCBA", 14, 0.3, 0.75, 0, 0.1), 400);
        Time(to, "14 segments x 36 runs, 3 codes", new InventedDay("ABCCBAABCCBAABCCBAABCCBAABCCBAABCCBA", 14, 0.3, 0.75, 0, 0.1), 200);
        Time(to, "1000 segments x 40 runs, 2 codes", new InventedDay("ABBAABBAABBAABBAABBAABBAABBAABBAABBAABBA", 1000, 0.3, 0.75, 0, 0.1), 5);
    }

    private static void Time(TextWriter to, string name, InventedDay invented, int times)
    {
        MeasuredDay day = invented.Draw(new Random(1));
        ComparisonTerms terms = new("A");
        for (int i = 0; i < times; i++)
        {
            Comparison.Of(day, terms);
        }

        long allocated = GC.GetAllocatedBytesForCurrentThread();
        Stopwatch watch = Stopwatch.StartNew();
        for (int i = 0; i < times; i++)
        {
            Comparison.Of(day, terms);
        }

        to.WriteLine($"{name}: {watch.Elapsed.TotalMilliseconds / times:0.000} ms, {(GC.GetAllocatedBytesForCurrentThread() - allocated) / times / 1024} KiB");
    }
}
