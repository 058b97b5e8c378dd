using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>
/// How often a word of the headline is wrong, per study and not per line: a difference that is not there, or the same within the margin
/// where the difference is as large as it. Percent of so many studies drawn from one seed.
/// </summary>
internal sealed class HeadlineErrors(int studies, int seed)
{
    public const double MarginDb = 1;

    /// <summary>The standard error of a rate of 5 %, percent.</summary>
    public double StandardErrorPercent => 100 * Math.Sqrt(0.05 * 0.95 / studies);

    /// <summary>A study of a fixed order.</summary>
    /// <param name="day">The model of a day; differences of 0 and of the margin.</param>
    /// <param name="row">A number of this cell's own.</param>
    public ErrorShares OfPlan(InventedDay day, int row)
    {
        ComparisonTerms terms = new("A") { Looks = new Looks([day.Order.Length]) };
        (int wrong, int larger, int alone) = (0, 0, 0);
        Each(
            row,
            lot =>
            {
                IReadOnlyList<MainConclusion> found = MainConclusions.Of(day.Draw(lot).Day, terms);
                Add(ref wrong, found.Any(pair => IsWrong(day, pair)));
                Add(ref larger, found.Any(pair => pair.IsLarger));
                Add(
                    ref alone,
                    found.Any(pair => day.DifferenceOfDb(pair.Code[0]) == 0 && pair is { Conclusion: not null, Overall.P: < 0.05 })
                );
            }
        );
        return new ErrorShares(Percent(wrong), Percent(larger), Percent(alone));
    }

    /// <summary>
    /// A crew that lengthens the order at its end as long as no word is wrong yet, up to four times, and stops where one is. An early one
    /// lengthens in the middle too, one run before the plan's end, whenever it does not yet like what it sees.
    /// </summary>
    /// <param name="crew">The crew.</param>
    /// <param name="row">A number of this cell's own.</param>
    /// <returns>By the program's rule, and by words at 5 % each time.</returns>
    public (double Spent, double Plain) OfCrew(LengtheningCrew crew, int row)
    {
        int[] ends = crew.Ends;
        ComparisonTerms[] looks = [.. ends.Select((_, times) => new ComparisonTerms("A") { Looks = new Looks(ends[..(times + 1)]) })];
        ComparisonTerms each = new("A");
        (int spent, int plain) = (0, 0);
        Each(
            row,
            lot =>
            {
                MeasuredDay whole = crew.Day.Draw(lot).Day;
                int first = 0;
                while (crew.IsEarly && first < ends.Length - 1 && !IsLiked(crew.Day, At(whole, ends[first] - 1, each)))
                {
                    first++;
                }

                bool EverWrong(Func<int, ComparisonTerms> terms) =>
                    Enumerable
                        .Range(first, ends.Length - first)
                        .Any(times => At(whole, ends[times], terms(times)).Any(pair => IsWrong(crew.Day, pair)));
                Add(ref spent, EverWrong(times => looks[times]));
                Add(ref plain, EverWrong(_ => each));
            }
        );
        return (Percent(spent), Percent(plain));
    }

    /// <summary>A crew that amends its question after the last run until a word is the one it likes.</summary>
    /// <param name="day">The model of a day.</param>
    /// <param name="asked">What the program takes for the headline after each amendment, and what the amended question would say.</param>
    /// <param name="row">A number of this cell's own.</param>
    /// <returns>The headline, and the amended question if it were believed.</returns>
    public (double Headline, double Amended) OfAmended(
        InventedDay day,
        IReadOnlyList<(ComparisonTerms Headline, ComparisonTerms Amended)> asked,
        int row
    )
    {
        (int headline, int amended) = (0, 0);
        Each(
            row,
            lot =>
            {
                MeasuredDay drawn = day.Draw(lot).Day;
                bool WrongBy(ComparisonTerms terms) => MainConclusions.Of(drawn, terms).Any(pair => IsWrong(day, pair));
                (ComparisonTerms chosen, ComparisonTerms liked) = asked.FirstOrDefault(each => WrongBy(each.Amended), asked[0]);
                Add(ref headline, WrongBy(chosen));
                Add(ref amended, WrongBy(liked));
            }
        );
        return (Percent(headline), Percent(amended));
    }

    private static bool IsWrong(InventedDay day, MainConclusion pair) =>
        pair.Conclusion is { } word && (day.DifferenceOfDb(pair.Code[0]) == 0 ? word.ShowsDifference : word.ShowsEquivalence);

    // what leads to a wrong word: the interval so far leaves out 0, or lies within the margin
    private static bool IsLiked(InventedDay day, IReadOnlyList<MainConclusion> soFar) =>
        soFar.Any(pair =>
            day.DifferenceOfDb(pair.Code[0]) == 0
                ? pair.Overall is { Lo95Db: > 0 } or { Hi95Db: < 0 }
                : pair.Overall is { Lo90Db: > -MarginDb, Hi90Db: < MarginDb }
        );

    private static IReadOnlyList<MainConclusion> At(MeasuredDay whole, int runs, ComparisonTerms terms) =>
        MainConclusions.Of(new MeasuredDay([.. whole.Levels.Where(level => level.Run <= runs)]), terms);

    private static void Add(ref int count, bool holds)
    {
        if (holds)
        {
            Interlocked.Increment(ref count);
        }
    }

    private double Percent(int count) => 100.0 * count / studies;

    private void Each(int row, Action<RepeatableLot> study) =>
        Parallel.For(0, studies, new ParallelOptions { MaxDegreeOfParallelism = 2 }, number => study(RepeatableLot.For(seed, row, number)));
}

/// <summary>Shares of studies, percent.</summary>
/// <param name="Wrong">A word of the headline is wrong.</param>
/// <param name="Larger">A word says larger than the margin.</param>
/// <param name="Alone">A difference that is not there would be shown, were each pair's own p held against 5 %.</param>
internal sealed record ErrorShares(double Wrong, double Larger, double Alone);

/// <summary>A crew that lengthens at will.</summary>
/// <param name="Name">What it does.</param>
/// <param name="Start">The order as it was planned.</param>
/// <param name="More">What it drives more, each time.</param>
/// <param name="Day">The model of a day, its order the longest.</param>
/// <param name="IsEarly">Whether it also lengthens in the middle.</param>
internal sealed record LengtheningCrew(string Name, string Start, string More, InventedDay Day, bool IsEarly = false)
{
    private const int Most = 4;

    public static LengtheningCrew Of(string name, string start, string more, bool isEarly = false, double differenceDb = 0) =>
        new(
            name,
            start,
            more,
            new InventedDay(start + string.Concat(Enumerable.Repeat(more, Most)))
            {
                DifferenceDb = differenceDb,
                LaterDifferenceDb = differenceDb,
            },
            isEarly
        );

    public int[] Ends => [.. Enumerable.Range(0, Most + 1).Select(times => Start.Length + times * More.Length)];
}
