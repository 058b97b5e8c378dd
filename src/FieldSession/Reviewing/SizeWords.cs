using FieldSession.Comparing;
using FieldSession.Statistics;

namespace FieldSession.Reviewing;

/// <summary>How many runs a difference needs, as plain text of 80 columns.</summary>
public static class SizeWords
{
    /// <summary>The lines.</summary>
    /// <param name="size">The answer.</param>
    /// <param name="asked">A number of runs per code that was asked for; null: none.</param>
    /// <param name="assumed">Names of the repeatability figures that nobody gave.</param>
    public static IReadOnlyList<string> Of(DaySize size, SizeRow? asked, IReadOnlyList<string> assumed)
    {
        ArgumentNullException.ThrowIfNull(size);
        ArgumentNullException.ThrowIfNull(assumed);
        SizeTerms terms = size.Terms;
        string percent = $"{terms.Power * 100:0.#} %";
        return
        [
            .. PlainLines.Wrapped(
                "",
                $"Run-to-run SD {Figures.FineDb(terms.RunSdDb)} dB, reading SD {Figures.FineDb(terms.ReadingSdDb)} dB, "
                    + $"{terms.Segments} segments: "
                    + $"the mean of a run has SD {Figures.FineDb(terms.RunMeanSdDb)} dB."
            ),
            .. assumed.Count == 0
                ? []
                : PlainLines.Wrapped(
                    "",
                    $"Assumed, not measured: {string.Join(", ", assumed.Select(Named))}. Take your own from earlier days."
                ),
            "",
            .. asked is null ? [] : Asked(asked, terms, percent),
            .. Needed(size, percent),
            "",
            Row("runs a code", "smallest shown", "same, drift out", $"shows {Figures.MarginDb(terms.DifferenceDb)} dB", "shows equal"),
            .. size.Rows.Select(Row),
            "",
            .. PlainLines.Wrapped(
                "",
                $"Smallest shown: the true difference that is shown with a chance of {percent}. Drift out: where a straight drift "
                    + "is taken out of the "
                    + "comparison, which happens from 6 runs on. Drive in an order that balances drift: R 1 1 R, or R 1 1 R R 1 1 R; "
                    + "never R R 1 1."
            ),
        ];
    }

    private static IEnumerable<string> Asked(SizeRow asked, SizeTerms terms, string percent) =>
        PlainLines.Wrapped(
            "",
            $"{asked.Runs} runs per code show {Fine(asked.SmallestDifferenceDb)} or more with a chance of {percent}"
                + (asked.SmallestWithDriftDb is null ? "" : $" ({Fine(asked.SmallestWithDriftDb)} with the drift taken out)")
                + $", {Figures.MarginDb(terms.DifferenceDb)} dB with {Share(asked.Power)}, and that two codes are equal within "
                + $"{Figures.MarginDb(terms.MarginDb)} dB with {Share(asked.EquivalencePower)}."
        );

    private static IEnumerable<string> Needed(DaySize size, string percent) =>
        [
            .. PlainLines.Wrapped(
                "",
                $"To show a difference of {Figures.MarginDb(size.Terms.DifferenceDb)} dB with a chance of {percent}: "
                    + $"{Runs(size.RunsForDifference)}"
                    + (
                        size.RunsForDifferenceWithDrift == size.RunsForDifference
                            ? "."
                            : $"; with the drift taken out: {Runs(size.RunsForDifferenceWithDrift)}."
                    )
            ),
            .. PlainLines.Wrapped(
                "",
                $"To show that two equal codes are equal within {Figures.MarginDb(size.Terms.MarginDb)} dB with a chance of "
                    + $"{percent}: {Runs(size.RunsForEquivalence)}."
            ),
        ];

    private static string Row(SizeRow row) =>
        Row(
            $"{row.Runs}",
            Fine(row.SmallestDifferenceDb),
            row.SmallestWithDriftDb is null ? "" : Fine(row.SmallestWithDriftDb),
            Share(row.Power),
            Share(row.EquivalencePower)
        );

    private static string Row(string runs, string smallest, string withDrift, string power, string equal) =>
        PlainLines.Right(runs, 12)
        + PlainLines.Right(smallest, 17)
        + PlainLines.Right(withDrift, 17)
        + PlainLines.Right(power, 17)
        + PlainLines.Right(equal, 16);

    private static string Named(string figure) =>
        figure switch
        {
            "run_sd" => "run-to-run SD",
            "reading_sd" => "reading SD",
            _ => figure,
        };

    private static string Runs(int? runs) => runs is null ? "more than 200 runs per code" : $"{runs} runs per code";

    private static string Fine(double? db) => db is null ? Figures.Unknown : $"{Figures.FineDb(db)} dB";

    private static string Share(double chance) => $"{chance * 100:0} %";
}

/// <summary>
/// How many forced choices a share of right answers needs, and what a number of them can show, as plain text of 80 columns.
/// </summary>
public static class ChoiceSizeWords
{
    private const double Pair = 1 / 2.0;
    private const double Triangle = 1 / 3.0;

    /// <summary>The lines.</summary>
    /// <param name="trials">The number asked for.</param>
    public static IReadOnlyList<string> Of(int trials) =>
        [
            .. PlainLines.Wrapped("", $"What {trials} forced choices can show at 5 %; 'n for' gives a power of 80 %:"),
            Row("", "right needed", "power, 75 %", "power, 90 %", "n for 75 %", "n for 90 %"),
            Row("paired, two-sided", Pair, isTwoSided: true, trials),
            Row("paired, one-sided", Pair, isTwoSided: false, trials),
            Row("triangle", Triangle, isTwoSided: false, trials),
            .. PlainLines.Wrapped(
                "",
                "'Not heard' may be said only of a set that had that chance; fix number, side and question before the first "
                    + "choice and stop by that plan alone."
            ),
        ];

    private static string Row(string name, double chance, bool isTwoSided, int trials)
    {
        ChoiceSize size = ChoiceSize.Of(chance, isTwoSided, trials, 0.75);
        return Row(
            name,
            size.FewestRight is { } fewest ? $"{fewest}" : "never",
            ChoiceWords.Share(size.PowerAt75),
            ChoiceWords.Share(size.PowerAt90),
            Needed(chance, isTwoSided, 0.75),
            Needed(chance, isTwoSided, 0.90)
        );
    }

    private static string Needed(double chance, bool isTwoSided, double share) =>
        ChoiceSize.TrialsFor(chance, isTwoSided, share) is { } trials ? $"{trials}" : "over 200";

    private static string Row(string name, params string[] cells) =>
        PlainLines.Left(name, 18) + string.Concat(cells.Select((cell, place) => PlainLines.Right(cell, place == 0 ? 14 : 12)));
}
