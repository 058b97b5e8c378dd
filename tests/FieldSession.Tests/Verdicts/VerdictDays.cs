using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Verdicts;

/// <summary>A day and the terms that it is compared on.</summary>
internal sealed record VerdictDay(string Name, MeasuredDay Day, ComparisonTerms Terms);

/// <summary>
/// Days that make the program say something: random ones of many shapes, and some made by hand for the words that chance seldom brings.
/// </summary>
internal static class VerdictDays
{
    private static string[] Orders => ["A B A", "A B B A", "A B A B A", "A B A B A B", "A B B A A B B A", "A B C C B A", "A B C B A C A"];

    public static IEnumerable<VerdictDay> Random(int days)
    {
        Random lot = new(20);
        for (int day = 0; day < days; day++)
        {
            string order = Orders[day % Orders.Length];
            double difference = 3.5 * lot.NextDouble() * lot.NextDouble();
            double runSd = 0.5 * lot.NextDouble();
            double readingSd = 0.2 + 0.6 * lot.NextDouble();
            double step = day % 3 == 0 ? 1 : 0.1;
            double[] runs = [.. order.Split(' ').Select(code => runSd * Normal(lot) + (code == "B" ? difference : 0))];
            MeasuredDay typed = InventedReadings.Day(
                order,
                3 + day % 6,
                (run, s) => Math.Round((60 + s + runs[run] + readingSd * Normal(lot)) / step) * step
            );
            yield return new VerdictDay(
                $"random {day}",
                typed.Spoilt(level => lot.Next(12) == 0),
                new ComparisonTerms(
                    "A",
                    MarginDb: day % 2 == 0 ? 1 : 1.5,
                    PlanComplete: day % 9 != 8,
                    Archive: day % 5 == 4 ? Archive : null
                )
                {
                    AsksAllPairs = day % 4 == 3,
                    Looks = new Looks([.. Enumerable.Range(0, 1 + day % 4).Select(lengthened => runs.Length + 2 * lengthened)]),
                }
            );
        }
    }

    public static IEnumerable<VerdictDay> ByHand()
    {
        ComparisonTerms plain = new("A");
        yield return new VerdictDay("every run the same", Flat("A B B A"), plain);
        yield return new VerdictDay("each code once", InventedReadings.Scattered("A B", 4), plain);
        yield return new VerdictDay("three runs", InventedReadings.Scattered("A B A", 4), plain);
        yield return new VerdictDay("each code on its own car", Cars(InventedReadings.Scattered("A A B B", 4), "XXYY"), plain);
        yield return new VerdictDay(
            "the second car takes the last degree of freedom",
            Cars(InventedReadings.Scattered("A B A", 4), "XXY"),
            plain
        );
        yield return new VerdictDay("four runs in two cars", Cars(InventedReadings.Scattered("A B B A", 4), "XXYY"), plain);
        yield return new VerdictDay("a large difference", InventedReadings.Scattered("A B B A A B B A", 4, secondCodeDb: 9), plain);
        yield return new VerdictDay("half of the plan", InventedReadings.Scattered("A B B A", 4), plain with { PlanComplete = false });
        yield return new VerdictDay("nothing read on both codes", Apart(), plain);
        yield return new VerdictDay("lent from the archive", InventedReadings.Scattered("A B A", 4), plain with { Archive = Archive });
    }

    private static ArchiveLine[] Archive =>
        [
            .. from measureClass in new MeasureClass?[] { null, MeasureClass.Steady }
            from day in new[] { "1", "2" }
            select new ArchiveLine(day, measureClass, 3, 0.4, 0.2, 20, 0.6),
        ];

    private static MeasuredDay Flat(string order) => InventedReadings.Day(order, 4, (_, s) => 60 + s);

    private static MeasuredDay Cars(MeasuredDay day, string cars) =>
        day with
        {
            Levels = [.. day.Levels.Select(level => level with { Car = $"{cars[level.Run - 1]}" })],
        };

    // every segment of one code is spoilt where the other was read
    private static MeasuredDay Apart() =>
        InventedReadings.Scattered("A B A B", 4).Spoilt(level => level.Code == "A" == level.Segment is "s0" or "s1");

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}

/// <summary>Many such days, compared once for all tests of the meter's words.</summary>
public sealed class ComparedDays
{
    public const string Name = "Compared days";

    internal ImmutableArray<(VerdictDay Day, Comparison Comparison)> All { get; } =
    [.. VerdictDays.Random(700).Concat(VerdictDays.ByHand()).Select(day => (day, BlindComparison.Of(day.Day, day.Terms)))];
}

/// <summary>The tests that share them.</summary>
[CollectionDefinition(ComparedDays.Name)]
public sealed class ComparedDaysAreShared : ICollectionFixture<ComparedDays>;
