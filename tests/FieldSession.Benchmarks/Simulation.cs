using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>Measures error rates of the comparison on invented days: how often it is wrong, how wide it is, how often it sees 1 dB.</summary>
internal static class Simulation
{
    private const double TrueDb = 1;

    /// <summary>Prints one row per order and run-to-run scatter. Same seed and days, same table.</summary>
    public static void Print(TextWriter to, int days, int seed)
    {
        to.WriteLine($"10 segments, reading SD 0.75 dB, {days} days a row, seed {seed}");
        to.WriteLine("| order | run SD dB | false difference % | cover % | false equivalence at 1 dB % | median half-width dB | power at 1 dB % |");
        to.WriteLine("| --- | --- | --- | --- | --- | --- | --- |");
        foreach (string order in new[] { "ABA", "ABBA", "ABAB", "AABB", "ABABAB", "ABBAABBA" })
        {
            foreach (double runSdDb in new[] { 0, 0.2, 0.4, 0.6 })
            {
                Estimate[] same = Run(new InventedDay(order, 10, runSdDb, 0.75, 0), days, seed);
                Estimate[] apart = Run(new InventedDay(order, 10, runSdDb, 0.75, TrueDb), days, seed + 1);
                double[] widths = [.. same.Select(estimate => (estimate.Hi95Db!.Value - estimate.Lo95Db!.Value) / 2).Order()];
                to.WriteLine($"| {order} | {runSdDb:0.0} | {Share(same, e => e.P < 0.05):0.0} | {Share(apart, e => e.Lo95Db <= TrueDb && TrueDb <= e.Hi95Db):0.0} | "
                    + $"{Share(apart, e => e.PTost < 0.05):0.0} | {widths[widths.Length / 2]:0.00} | {Share(apart, e => e.P < 0.05):0.0} |");
            }
        }
    }

    private static double Share(Estimate[] estimates, Func<Estimate, bool> holds) => 100.0 * estimates.Count(holds) / estimates.Length;

    private static Estimate[] Run(InventedDay invented, int days, int seed)
    {
        Estimate[] estimates = new Estimate[days];
        ComparisonTerms terms = new("A");
        Parallel.For(0, days, new ParallelOptions { MaxDegreeOfParallelism = 2 }, day =>
        {
            MeasuredDay drawn = invented.Draw(new Random(seed * 1_000_003 + day));
            estimates[day] = Comparison.Of(drawn, terms).Comparisons[0].Classes.All!.Overall!;
        });
        return estimates;
    }
}
