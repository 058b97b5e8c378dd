using FieldSession.Statistics;

namespace FieldSession.Reviewing;

/// <summary>How many forced choices a share of right answers needs, and what a number of them can show, as plain text of 80 columns.</summary>
public static class ChoiceSizeWords
{
    private const double Pair = 1 / 2.0;
    private const double Triangle = 1 / 3.0;

    /// <summary>The lines.</summary>
    /// <param name="trials">The number asked for.</param>
    public static IReadOnlyList<string> Of(int trials) =>
    [
        .. PlainLines.Wrapped("", $"What {trials} forced choices can show at 5 %, and how many find a share of right answers with a chance of 80 %:"),
        Row("", "right needed", "power, 75 %", "power, 90 %", "n for 75 %", "n for 90 %"),
        Row("paired, two-sided", Pair, isTwoSided: true, trials),
        Row("paired, one-sided", Pair, isTwoSided: false, trials),
        Row("triangle", Triangle, isTwoSided: false, trials),
        .. PlainLines.Wrapped("", "'Not heard' may be said only of a set that had that chance; fix number, side and question before the first choice and stop by that plan alone."),
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
            Needed(chance, isTwoSided, 0.90));
    }

    private static string Needed(double chance, bool isTwoSided, double share) =>
        ChoiceSize.TrialsFor(chance, isTwoSided, share) is { } trials ? $"{trials}" : "over 200";

    private static string Row(string name, params string[] cells) =>
        PlainLines.Left(name, 18) + string.Concat(cells.Select((cell, place) => PlainLines.Right(cell, place == 0 ? 14 : 12)));
}
