namespace FieldSession.Benchmarks;

/// <summary>
/// How often the headline of a whole study is wrong (<see cref="HeadlineErrors"/>): several candidates; an order that is lengthened at will
/// by a crew that stops where it likes what it sees; a question that is amended after the result; readings that are lost unevenly.
/// </summary>
internal static class Procedure
{
    private const int FirstRow = 20_000;

    /// <summary>Studies of a fixed order.</summary>
    public static IReadOnlyList<(string Name, InventedDay Day)> Plans =>
        [
            .. Named("two codes", day => day, "ABABAB", "ABBAABBA"),
            .. Named("three codes", day => day, "ABACABAC", "ABCCBAABCCBA"),
            .. Named("four codes", day => day, "ABACADABACAD", "ABCDDCBAABCDDCBA"),
            .. Named("two codes, 30 % of B's readings lost, 5 % of A's", Uneven, "ABABAB", "ABBAABBA"),
            .. Named("three codes, 30 % of the candidates' readings lost, 5 % of A's", Uneven, "ABACABAC", "ABCCBAABCCBA"),
            .. Named("two codes, run SD 0.2, reading SD 0.4 dB", Precise, "ABBAABBA"),
            .. Named("three codes, run SD 0.2, reading SD 0.4 dB", Precise, "ABCCBAABCCBA"),
            .. Named("four codes, run SD 0.2, reading SD 0.4 dB", Precise, "ABCDDCBAABCDDCBA"),
        ];

    /// <summary>Crews that lengthen at will.</summary>
    public static IReadOnlyList<LengtheningCrew> Crews =>
        [
            LengtheningCrew.Of("one run of each at the plan's end", "ABBA", "AB"),
            LengtheningCrew.Of("one run of each at the plan's end", "ABABAB", "AB"),
            LengtheningCrew.Of("four runs at the plan's end", "ABBA", "ABBA"),
            LengtheningCrew.Of("four runs at the plan's end", "ABBAABBA", "ABBA"),
            LengtheningCrew.Of("one run of each, before the plan's end too", "ABABAB", "AB", isEarly: true),
            LengtheningCrew.Of("three codes, one run of each at the plan's end", "ABCCBA", "ABC"),
            LengtheningCrew.Of("three codes, one run of each, before the plan's end too", "ABCCBAABCCBA", "ABC", isEarly: true),
            LengtheningCrew.Of(
                "true difference 1 dB, four runs until 'same within'",
                "ABBAABBA",
                "ABBA",
                differenceDb: HeadlineErrors.MarginDb
            ),
            LengtheningCrew.Of(
                "three codes, both 1 dB, one run of each until 'same within'",
                "ABCCBAABCCBA",
                "ABC",
                differenceDb: HeadlineErrors.MarginDb
            ),
        ];

    /// <summary>A plan with its candidates as far from the control as the margin.</summary>
    public static InventedDay Apart(InventedDay day) =>
        day with
        {
            DifferenceDb = HeadlineErrors.MarginDb,
            LaterDifferenceDb = HeadlineErrors.MarginDb,
        };

    /// <summary>
    /// The first candidate the same as the control, the others as far from it as the margin; null: there is one candidate only.
    /// </summary>
    public static InventedDay? Mixed(InventedDay day) =>
        day.Order.Contains('C') ? day with { LaterDifferenceDb = HeadlineErrors.MarginDb } : null;

    /// <summary>Prints the tables. Same seed and studies, same tables.</summary>
    public static void Print(TextWriter to, int studies, int seed)
    {
        HeadlineErrors errors = new(studies, seed);
        to.WriteLine(
            $"10 segments, reading SD 0.75 dB and run SD 0.4 dB where no other stands, margin 1 dB, {studies} studies a cell, "
                + $"seed {seed}; standard error of 5 %: {errors.StandardErrorPercent:0.00}"
        );
        int row = PrintPlans(to, errors, FirstRow);
        row = PrintCrews(to, errors, row);
        PrintAmended(to, errors, row);
    }

    private static int PrintPlans(TextWriter to, HeadlineErrors errors, int row)
    {
        to.WriteLine(
            "| study | order | all the same: a difference % | all 1 dB apart: 'same within' % | all 1 dB apart: 'larger than "
                + "1 dB' % | first the same, others 1 dB apart: either % | all the same, by each pair's own p at 5 % |"
        );
        to.WriteLine("| --- | --- | --- | --- | --- | --- | --- |");
        foreach ((string name, InventedDay day) in Plans)
        {
            ErrorShares none = errors.OfPlan(day, row++);
            ErrorShares apart = errors.OfPlan(Apart(day), row++);
            ErrorShares? mixed = Mixed(day) is { } later ? errors.OfPlan(later, row++) : null;
            to.WriteLine(
                $"| {name} | {day.Order} | {none.Wrong:0.0} | {apart.Wrong:0.0} | {apart.Larger:0.0} | "
                    + $"{mixed?.Wrong.ToString("0.0") ?? "-"} | {none.Alone:0.0} |"
            );
            to.Flush();
        }

        return row;
    }

    private static int PrintCrews(TextWriter to, HeadlineErrors errors, int row)
    {
        to.WriteLine();
        to.WriteLine(
            "| a crew that lengthens up to four times and stops where it likes | planned | each time | a wrong word % | "
                + "words at 5 % each time % |"
        );
        to.WriteLine("| --- | --- | --- | --- | --- |");
        foreach (LengtheningCrew crew in Crews)
        {
            (double spent, double plain) = errors.OfCrew(crew, row++);
            to.WriteLine($"| {crew.Name} | {crew.Start} | {crew.More} | {spent:0.0} | {plain:0.0} |");
            to.Flush();
        }

        return row;
    }

    private static void PrintAmended(TextWriter to, HeadlineErrors errors, int row)
    {
        InventedDay day = new(AmendedQuestions.Order, 14) { Impacts = 4 };
        (double headline, double amended) = errors.OfAmended(day, AmendedQuestions.Measures, row++);
        (double headlineApart, double amendedApart) = errors.OfAmended(Apart(day), AmendedQuestions.Margins, row);
        to.WriteLine();
        to.WriteLine(
            "| a question amended after the last run until it says what the crew likes, ABBAABBA | headline wrong % | the "
                + "amended one would say it % |"
        );
        to.WriteLine("| --- | --- | --- |");
        to.WriteLine($"| no difference: measure or main segments, until a difference is shown | {headline:0.0} | {amended:0.0} |");
        to.WriteLine($"| 1 dB apart: margin, until 'same within' is shown | {headlineApart:0.0} | {amendedApart:0.0} |");
    }

    private static IEnumerable<(string Name, InventedDay Day)> Named(
        string name,
        Func<InventedDay, InventedDay> change,
        params string[] orders
    ) => orders.Select(order => (name, change(new InventedDay(order))));

    private static InventedDay Uneven(InventedDay day) => day with { LostOfOthersShare = 0.30, MissingShare = 0.05 };

    private static InventedDay Precise(InventedDay day) => day with { RunSdDb = 0.2, ReadingSdDb = 0.4 };
}
