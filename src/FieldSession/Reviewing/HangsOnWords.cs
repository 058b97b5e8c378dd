using FieldSession.Comparing;
using FieldSession.Measures;

namespace FieldSession.Reviewing;

/// <summary>What the word of a class hangs on: one sentence, and the rest in a table.</summary>
public static class HangsOnWords
{
    /// <summary>
    /// The least change that turns the word, and how often that happens by chance; then single runs, segments or the drift column that turn
    /// it too. Null: there is no word that could turn.
    /// </summary>
    public static string? Sentence(Sensitivity? sensitivity) =>
        sensitivity switch
        {
            null => null,
            { Least: { } least } => ReviewingWords.ChangeTurnsWord(Change(least), least.Verdict, Often(least.ShareByChance))
                + AlsoTurns(sensitivity, least),
            _ when sensitivity.Lines.Any(line => line.HasVerdict) && !sensitivity.VerdictChanges => ReviewingWords.NoSmallChangeTurnsWord(
                sensitivity.ReadingsTried ? ReviewingWords.FewReadings : ReviewingWords.NoReadings
            ),
            _ => null,
        };

    /// <summary>
    /// The range of the difference, then every change that gives another word; changes that leave too little for one are counted.
    /// </summary>
    /// <param name="sensitivity">What was tried.</param>
    /// <param name="plain">The word as it is.</param>
    public static IEnumerable<HangsOnRow> Table(Sensitivity sensitivity, string plain)
    {
        ArgumentNullException.ThrowIfNull(sensitivity);
        yield return new HangsOnRow(
            ReviewingWords.AnyOfChanges(sensitivity.Lines.Count),
            $"{Figures.SignedFineDb(sensitivity.LowestDb)} to {Figures.SignedFineDb(sensitivity.HighestDb)}",
            ""
        );
        foreach (SensitivityLine line in sensitivity.Lines.Where(line => line.HasVerdict && line.Verdict != plain))
        {
            yield return new HangsOnRow(Name(line), Figures.SignedFineDb(line.Overall.DifferenceDb), line.Verdict);
        }

        int silent = sensitivity.Lines.Count(line => !line.HasVerdict);
        if (silent > 0)
        {
            yield return new HangsOnRow(ReviewingWords.SomeOfChanges(silent), "", ReviewingWords.TooLittleForWord);
        }
    }

    // one segment or run is more than two readings, but easier to see: whoever asks how firm the answer is has to know it
    private static string AlsoTurns(Sensitivity sensitivity, LeastChange least)
    {
        string[] single =
        [
            .. sensitivity
                .Lines.Where(line => line.HasVerdict && line.Verdict == least.Verdict && line.Change != SensitivityChange.SpoiltPutBack)
                .Where(line => !IsIt(line, least))
                .Select(Name),
        ];
        return single.Length == 0 ? "" : ReviewingWords.TurnedToo(single[0], single.Length - 1);
    }

    private static bool IsIt(SensitivityLine line, LeastChange least) =>
        least.Places is [var place]
        && (least.Size, line.Change) switch
        {
            (ChangeSize.Run, SensitivityChange.RunLeftOut) => line.Name == $"{place.Run}",
            (ChangeSize.Segment, SensitivityChange.SegmentLeftOut) => line.Name == place.Segment,
            _ => false,
        };

    private static string Change(LeastChange least) =>
        least switch
        {
            { Size: ChangeSize.Run } => ReviewingWords.RunLeftOut(least.Places[0].Run!.Value),
            { Size: ChangeSize.Segment } => ReviewingWords.SegmentLeftOut(least.Places[0].Segment!),
            _ when least.Places.All(place => place.PutBack) => ReviewingWords.ReadingsPutBack(least.Places.Count, Places(least, Place)),
            _ when least.Places.All(place => !place.PutBack) => ReviewingWords.ReadingsLeftOut(least.Places.Count, Places(least, Place)),
            _ => ReviewingWords.FlagsChanged(
                least.Places.Count,
                Places(least, place => $"{Place(place)} {(place.PutBack ? ReviewingWords.PutBack : ReviewingWords.LeftOut)}")
            ),
        };

    private static string Places(LeastChange least, Func<ChangedPlace, string> place) => string.Join("; ", least.Places.Select(place));

    private static string Place(ChangedPlace place) => $"run {place.Run}, {place.Segment}";

    private static string Name(SensitivityLine line) =>
        line.Change switch
        {
            SensitivityChange.SpoiltPutBack => ReviewingWords.SpoiltPutBack,
            SensitivityChange.RunLeftOut => $"run {line.Name} {ReviewingWords.LeftOut}",
            SensitivityChange.SegmentLeftOut => $"{line.Name} {ReviewingWords.LeftOut}",
            _ => ReviewingWords.DriftColumnSwitched,
        };

    // simulated shares are good to a tenth
    private static string Often(double share) =>
        Math.Round(10 * share) switch
        {
            0 => ReviewingWords.HardlyAnySuchDay,
            10 => ReviewingWords.AlmostEverySuchDay,
            var tenths => ReviewingWords.TenthsOfSuchDays(EnoughDigits.Plain(tenths, 0)),
        };
}

/// <summary>A row of the table of changes.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Difference">The difference then, dB.</param>
/// <param name="Verdict">The word then; empty: several changes.</param>
public sealed record HangsOnRow(string Change, string Difference, string Verdict);

/// <summary>
/// What is below a verdict in words: the line under an assumed repeatability, and how much the result hangs on single parts of the day.
/// </summary>
internal static class ExtraWords
{
    private const string Indent = "    ";

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(ClassComparison one) => [.. Assumed(one.Assumed), .. Sensitivity(one.Sensitivity, one)];

    private static IEnumerable<string> Assumed(Estimate? assumed) =>
        assumed?.Lo95Db is null
            ? []
            : PlainLines.Wrapped(
                Indent,
                $"(no archive: if runs repeat with 0.5 dB, which is assumed and not measured, {Figures.Interval95(assumed)}; no "
                    + "verdict rests on this)"
            );

    private static IEnumerable<string> Sensitivity(Sensitivity? sensitivity, ClassComparison one)
    {
        if (sensitivity is null || sensitivity.Lines.Count == 0)
        {
            return [];
        }

        // what is explored has no word that could turn, only a difference that moves
        HangsOnRow[] rows = [.. HangsOnWords.Table(sensitivity, one.Verdict).Take(one.IsExplored ? 1 : int.MaxValue)];
        return
        [
            .. !one.IsExplored && HangsOnWords.Sentence(sensitivity) is { } sentence
                ? PlainLines.Wrapped($"{Indent}hangs on: ", sentence)
                : [],
            $"{Indent}with one thing changed:",
            .. rows.SelectMany(row =>
                PlainLines
                    .Wrapped(PlainLines.Left($"{Indent}  {row.Change}", 36) + PlainLines.Right(row.Difference, 16) + "  ", row.Verdict)
                    .Select(line => line.TrimEnd())
            ),
        ];
    }
}
