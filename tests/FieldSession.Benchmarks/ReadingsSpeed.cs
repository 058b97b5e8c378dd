using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using FieldSession.Comparing;
using FieldSession.Store.Exports;
using FieldSession.Store.Readings;

namespace FieldSession.Benchmarks;

/// <summary>
/// A readings CSV of a million rows, from its bytes to the comparison as JSON, in shapes from few long runs to many short ones.
/// </summary>
[MemoryDiagnoser]
public class ReadingsSpeed
{
    private byte[] _csv = [];

    [Params(20, 1000, 50_000)]
    public int Runs { get; set; }

    [GlobalSetup]
    public void Write() => _csv = Csv(Runs, 1_000_000);

    /// <summary>A day's readings as CSV.</summary>
    /// <param name="runs">Its runs.</param>
    /// <param name="rows">Its readings.</param>
    public static byte[] Csv(int runs, int rows)
    {
        InventedDay invented = new(string.Concat(Enumerable.Repeat("ABBA", runs / 4)), rows / runs) { SpoiltShare = 0.1 };
        StringBuilder text = new("run,code,segment,kind,low,high,spoilt,minutes\n");
        foreach (MeasuredLevel level in invented.Draw(new RepeatableLot(1)).Day.Levels)
        {
            string spoilt = level.Spoilt ? "t" : "";
            text.Append(
                CultureInfo.InvariantCulture,
                $"{level.Run},{level.Code},{level.Segment},{level.Kind},{level.LowDb:0.0},{level.HighDb:0.0},{spoilt},{level.Minutes}\n"
            );
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    [Benchmark]
    public int ReadCompareWrite() =>
        ComparisonJson.Of(BlindComparison.Of(ReadingsCsv.Read(new MemoryStream(_csv), "day.csv").Content!, new ComparisonTerms())).Length;
}
