using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>What is below a verdict in words: the line under an assumed repeatability, and how much the result hangs on single parts of the day.</summary>
internal static class ExtraWords
{
    private const string Indent = "    ";

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(ClassComparison one) => [.. Assumed(one.Assumed), .. Sensitivity(one.Sensitivity, one)];

    private static IEnumerable<string> Assumed(Estimate? assumed) => assumed?.Lo95Db is null
        ? []
        : PlainLines.Wrapped(
            Indent,
            $"(no archive: if runs repeat with 0.5 dB, which is assumed and not measured, {Figures.Interval95(assumed)}; no verdict rests on this)");

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
            .. !one.IsExplored && HangsOnWords.Sentence(sensitivity) is { } sentence ? PlainLines.Wrapped($"{Indent}hangs on: ", sentence) : [],
            $"{Indent}with one thing changed:",
            .. rows.Select(row =>
                (PlainLines.Left($"{Indent}  {row.Change}", 36) + PlainLines.Right(row.Difference, 16) + "  " + PlainLines.Left(PlainLines.Ascii(row.Verdict), 26)).TrimEnd()),
        ];
    }
}
