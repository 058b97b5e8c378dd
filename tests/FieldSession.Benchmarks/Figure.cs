using System.Globalization;

namespace FieldSession.Benchmarks;

/// <summary>What was asked for: a median at most, and a 99th percentile at most.</summary>
internal sealed record Asked(double Median, double? P99 = null);

/// <summary>One thing that was measured several times.</summary>
/// <param name="What">What it is.</param>
/// <param name="Unit">Unit of the values, such as ms.</param>
/// <param name="Values">The values, in any order.</param>
/// <param name="Limit">What limits it.</param>
internal sealed record Figure(string What, string Unit, IReadOnlyList<double> Values, string Limit)
{
    /// <summary>What was asked for; null: nothing was.</summary>
    public Asked? Asked { get; init; }

    /// <summary>What the limit alone takes, in the same unit, measured in the same run or calculated; null: not known.</summary>
    public double? Floor { get; init; }

    /// <summary>The head of the table.</summary>
    public static IEnumerable<string> Head =>
        [
            "| what | n | median | 5 to 95 % | 99 % | asked: median, 99 % | the limit alone | what limits it |",
            "|---|---|---|---|---|---|---|---|",
        ];

    /// <summary>The median.</summary>
    public double Median => At(0.5);

    /// <summary>The row of the table.</summary>
    public string Row =>
        $"| {What} | {Values.Count} | {Number(Median)} {Unit} | {Number(At(0.05))} to {Number(At(0.95))} | "
        + $"{(Values.Count < 50 ? "" : Number(At(0.99)))} | {AskedInWords} | {FloorInWords} | {Limit} |";

    private string AskedInWords =>
        Asked is not { } asked
            ? ""
            : $"{Number(asked.Median)}{(asked.P99 is { } p99 ? $", {Number(p99)}" : "")}: {(IsMet(asked) ? "met" : "MISSED")}";

    private string FloorInWords => Floor is { } floor ? $"{Number(floor)} ({Number(Median / floor)} x)" : "";

    private bool IsMet(Asked asked) => Median <= asked.Median && (asked.P99 is null || At(0.99) <= asked.P99);

    private double At(double share) => Values.Order().ElementAt((int)(share * (Values.Count - 1)));

    private static string Number(double value) =>
        value.ToString(
            value >= 100 ? "0"
                : value >= 10 ? "0.#"
                : "0.##",
            CultureInfo.InvariantCulture
        );
}
