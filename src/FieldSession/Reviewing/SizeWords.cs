using FieldSession.Comparing;

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
            .. PlainLines.Wrapped("", $"Run-to-run SD {Figures.FineDb(terms.RunSdDb)} dB, reading SD {Figures.FineDb(terms.ReadingSdDb)} dB, {terms.Segments} segments: "
                + $"the mean of a run has SD {Figures.FineDb(terms.RunMeanSdDb)} dB."),
            .. assumed.Count == 0 ? [] : PlainLines.Wrapped("", $"Assumed, not measured: {string.Join(", ", assumed.Select(Named))}. Take your own from earlier days."),
            "",
            .. asked is null ? [] : Asked(asked, terms, percent),
            .. Needed(size, percent),
            "",
            Row("runs a code", "smallest shown", "same, drift out", $"shows {Figures.MarginDb(terms.DifferenceDb)} dB", "shows equal"),
            .. size.Rows.Select(Row),
            "",
            .. PlainLines.Wrapped("", $"Smallest shown: the true difference that is shown with a chance of {percent}. Drift out: where a straight drift is taken out of the "
                + "comparison, which happens from 6 runs on. Drive in an order that balances drift: R 1 1 R, or R 1 1 R R 1 1 R; never R R 1 1."),
        ];
    }

    private static IEnumerable<string> Asked(SizeRow asked, SizeTerms terms, string percent) => PlainLines.Wrapped(
        "",
        $"{asked.Runs} runs per code show a difference of {Fine(asked.SmallestDifferenceDb)} or more with a chance of {percent}"
        + (asked.SmallestWithDriftDb is null ? "" : $" ({Fine(asked.SmallestWithDriftDb)} with the drift taken out)")
        + $", {Figures.MarginDb(terms.DifferenceDb)} dB with {Share(asked.Power)}, and that two codes are equal within {Figures.MarginDb(terms.MarginDb)} dB with {Share(asked.EquivalencePower)}.");

    private static IEnumerable<string> Needed(DaySize size, string percent) =>
    [
        .. PlainLines.Wrapped("", $"To show a difference of {Figures.MarginDb(size.Terms.DifferenceDb)} dB with a chance of {percent}: {Runs(size.RunsForDifference)}"
            + (size.RunsForDifferenceWithDrift == size.RunsForDifference ? "." : $"; with the drift taken out: {Runs(size.RunsForDifferenceWithDrift)}.")),
        .. PlainLines.Wrapped("", $"To show that two equal codes are equal within {Figures.MarginDb(size.Terms.MarginDb)} dB with a chance of {percent}: {Runs(size.RunsForEquivalence)}."),
    ];

    private static string Row(SizeRow row) => Row(
        $"{row.Runs}",
        Fine(row.SmallestDifferenceDb),
        row.SmallestWithDriftDb is null ? "" : Fine(row.SmallestWithDriftDb),
        Share(row.Power),
        Share(row.EquivalencePower));

    private static string Row(string runs, string smallest, string withDrift, string power, string equal) =>
        PlainLines.Right(runs, 12) + PlainLines.Right(smallest, 17) + PlainLines.Right(withDrift, 17) + PlainLines.Right(power, 17) + PlainLines.Right(equal, 16);

    private static string Named(string figure) => figure switch
    {
        "run_sd" => "run-to-run SD",
        "reading_sd" => "reading SD",
        _ => figure,
    };

    private static string Runs(int? runs) => runs is null ? "more than 200 runs per code" : $"{runs} runs per code";

    private static string Fine(double? db) => db is null ? Figures.Unknown : $"{Figures.FineDb(db)} dB";

    private static string Share(double chance) => $"{chance * 100:0} %";
}
