using BenchmarkDotNet.Attributes;
using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>The whole comparison, all classes, clean and with spoilt readings, as it is made again after every reading.</summary>
[MemoryDiagnoser]
public class ComparisonSpeed
{
    private readonly ComparisonTerms _terms = new("A");
    private MeasuredDay _day = new([]);

    [Params("14 x 12, 3 codes", "14 x 36, 3 codes", "1000 x 40", "2000 x 40", "100 x 1000", "1000 x 1000")]
    public string Size { get; set; } = "";

    [GlobalSetup]
    public void Draw()
    {
        InventedDay invented = Size switch
        {
            "14 x 12, 3 codes" => new InventedDay("ABCCBAABCCBA", 14) { Impacts = 4 },
            "14 x 36, 3 codes" => new InventedDay(Repeated("ABCCBA", 36), 14) { Impacts = 4 },
            "1000 x 40" => new InventedDay(Repeated("ABBA", 40), 1000) { Impacts = 4 },
            "2000 x 40" => new InventedDay(Repeated("ABBA", 40), 2000) { Impacts = 4 },
            "100 x 1000" => new InventedDay(Repeated("ABBA", 1000), 100) { Impacts = 4 },
            _ => new InventedDay(Repeated("ABBA", 1000), 1000) { Impacts = 4 },
        };
        _day = (invented with { SpoiltShare = 0.1 }).Draw(new RepeatableLot(1)).Day;
    }

    [Benchmark]
    public Comparison Compare() => BlindComparison.Of(_day, _terms);

    private static string Repeated(string order, int runs) => string.Concat(Enumerable.Repeat(order, runs / order.Length));
}
