using BenchmarkDotNet.Attributes;
using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>What 'compare' and 'review' add to a day of 14 segments x 12 runs x 3 codes: every run, segment and flag tried once.</summary>
[MemoryDiagnoser]
public class SensitivitySpeed
{
    private readonly ComparisonTerms _terms = new("A");
    private readonly MeasuredDay _day = (new InventedDay("ABCCBAABCCBA", 14) { Impacts = 4, SpoiltShare = 0.1 })
        .Draw(new RepeatableLot(1))
        .Day;

    [Benchmark]
    public Comparison CompareAndTryEverything() => BlindComparison.InFull(_day, _terms);
}
