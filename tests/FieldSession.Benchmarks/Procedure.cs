using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>
/// How often the headline of a whole study is wrong, per study and not per line: a difference that is not there, or the same within the margin where the
/// difference is as large as it. Several candidates; an order that is lengthened at will by a crew that stops where it likes what it sees; a question
/// that is chosen after the result; readings that are lost unevenly.
/// </summary>
internal static class Procedure
{
    private const int MostLengthened = 4;

    private static (string Name, string[] Orders, Func<InventedDay, InventedDay> Change)[] Cells =>
    [
        ("two codes", ["ABABAB", "ABBAABBA"], day => day),
        ("three codes", ["ABACABAC", "ABCCBAABCCBA"], day => day),
        ("four codes", ["ABACADABACAD", "ABCDDCBAABCDDCBA"], day => day),
        ("two codes, 30 % of B's readings lost, 5 % of A's", ["ABABAB", "ABBAABBA"], day => day with { LostOfOthersShare = 0.30, MissingShare = 0.05 }),
        ("three codes, 30 % of the candidates' readings lost, 5 % of A's", ["ABACABAC", "ABCCBAABCCBA"], day => day with { LostOfOthersShare = 0.30, MissingShare = 0.05 }),
    ];

    /// <summary>Prints the table. Same seed and studies, same table.</summary>
    public static void Print(TextWriter to, int studies, int seed)
    {
        to.WriteLine($"10 segments, reading SD 0.75 dB, run SD 0.4 dB, margin 1 dB, {studies} studies a cell, seed {seed}; standard error of 5 %: {100 * Math.Sqrt(0.05 * 0.95 / studies):0.00}");
        to.WriteLine("| study | order | a false difference % | false 'same within', all 1 dB apart % | either, first the same, the others 1 dB apart % | so by each pair's own p % |");
        to.WriteLine("| --- | --- | --- | --- | --- | --- |");
        int row = 20_000;
        foreach ((string name, string[] orders, Func<InventedDay, InventedDay> change) in Cells)
        {
            foreach (string order in orders)
            {
                Rates none = Wrong(change(new InventedDay(order)), studies, seed, row++);
                Rates apart = Wrong(change(new InventedDay(order) { DifferenceDb = 1, LaterDifferenceDb = 1 }), studies, seed, row++);
                Rates mixed = Wrong(change(new InventedDay(order) { LaterDifferenceDb = 1 }), studies, seed, row++);
                to.WriteLine($"| {name} | {order} | {none.Word:0.0} | {apart.Word:0.0} | {(order.Contains('C') ? $"{mixed.Word:0.0}" : "-")} | {none.Alone:0.0} |");
                to.Flush();
            }
        }

        to.WriteLine();
        to.WriteLine("| a crew that lengthens at will and stops where it likes | start | a false difference % | words at 5 % each time % |");
        to.WriteLine("| --- | --- | --- | --- |");
        foreach ((string name, string start, string more, bool early) in Crews)
        {
            (double spent, double plain) = AtWill(start, more, early, studies, seed, row++);
            to.WriteLine($"| {name} | {start} | {spent:0.0} | {plain:0.0} |");
            to.Flush();
        }

        double chosen = ChosenAfter(studies, seed, row);
        to.WriteLine();
        to.WriteLine($"measure chosen after the result (steady, impact, all, whichever shows a difference), ABBAABBA: headline {chosen:0.0} %");
    }

    private static (string Name, string Start, string More, bool Early)[] Crews =>
    [
        ("one run of each at the plan's end, up to four times", "ABBA", "AB", false),
        ("one run of each at the plan's end, up to four times", "ABABAB", "AB", false),
        ("four runs at the plan's end, up to four times", "ABBA", "ABBA", false),
        ("one run of each, decided after every run, before the plan's end too", "ABABAB", "AB", true),
    ];

    private static Rates Wrong(InventedDay day, int studies, int seed, int row)
    {
        ComparisonTerms terms = new("A") { Looks = new Looks([day.Order.Length]) };
        int[] wrong = new int[studies];
        int[] alone = new int[studies];
        Each(studies, study =>
        {
            SeededLot lot = SeededLot.For(seed, row, study);
            Comparison comparison = Comparison.Of(day.Draw(lot).Day, terms);
            foreach (CodeComparison pair in comparison.Comparisons)
            {
                bool isSame = day.DifferenceOfDb(pair.Code[0]) == 0;
                ClassComparison? steady = pair.Classes.Steady;
                wrong[study] |= steady?.Conclusion is { } found && (isSame ? found.ShowsDifference : found.ShowsEquivalence) ? 1 : 0;
                alone[study] |= steady?.Conclusion is not null && isSame && steady.Overall?.P < 0.05 ? 1 : 0;
            }
        });
        return new Rates(100 * wrong.Average(), 100 * alone.Average());
    }

    /// <summary>The crew lengthens as long as nothing is shown; early: also in the middle, whenever the interval so far still holds 0.</summary>
    private static (double Spent, double Plain) AtWill(string start, string more, bool early, int studies, int seed, int row)
    {
        string longest = start + string.Concat(Enumerable.Repeat(more, MostLengthened));
        int[] ends = [.. Enumerable.Range(0, MostLengthened + 1).Select(times => start.Length + times * more.Length)];
        ComparisonTerms[] terms = [.. ends.Select((_, times) => new ComparisonTerms("A") { Looks = new Looks(ends[..(times + 1)]) })];
        int[] spent = new int[studies];
        int[] plain = new int[studies];
        Each(studies, study =>
        {
            MeasuredDay whole = new InventedDay(longest).Draw(SeededLot.For(seed, row, study)).Day;
            ClassComparison?[] at = [.. ends.Select((end, times) => Steady(whole, end, terms[times]))];
            int first = 0;
            while (early && first < MostLengthened && !LooksGood(Steady(whole, ends[first] - 1, terms[first])))
            {
                first++;
            }

            spent[study] = at.Skip(first).Any(one => one?.Conclusion is { ShowsDifference: true }) ? 1 : 0;
            plain[study] = at.Skip(first).Any(one => one?.Conclusion is not null && one.Overall?.P < 0.05) ? 1 : 0;
        });
        return (100 * spent.Average(), 100 * plain.Average());
    }

    // one run before the end: the interval so far leaves out 0
    private static bool LooksGood(ClassComparison? soFar) => soFar?.Overall is { Lo95Db: > 0 } or { Hi95Db: < 0 };

    private static ClassComparison? Steady(MeasuredDay whole, int runs, ComparisonTerms terms) =>
        Comparison.Of(new MeasuredDay([.. whole.Levels.Where(level => level.Run <= runs)]), terms).Comparisons is [{ } pair, ..] ? pair.Classes.Steady : null;

    // the frozen measure stays the headline, whatever is amended: the rate of the headline is that of the steady segments alone
    private static double ChosenAfter(int studies, int seed, int row)
    {
        InventedDay day = new("ABBAABBA", 14) { Impacts = 4 };
        ComparisonTerms terms = new("A") { Looks = new Looks([8]), MainMeasure = State.MainMeasure.Steady };
        int[] wrong = new int[studies];
        Each(studies, study => wrong[study] =
            Comparison.Of(day.Draw(SeededLot.For(seed, row, study)).Day, terms).Comparisons[0].Classes.Steady?.Conclusion is { ShowsDifference: true } ? 1 : 0);
        return 100 * wrong.Average();
    }

    private static void Each(int studies, Action<int> run) =>
        Parallel.For(0, studies, new ParallelOptions { MaxDegreeOfParallelism = 2 }, run);

    private readonly record struct Rates(double Word, double Alone);
}
