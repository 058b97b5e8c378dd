using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Comparing;
using FieldSession.Statistics;

namespace FieldSession.Tests.Verdicts;

/// <summary>The numbers behind a word on a class, unrounded, and what was printed beside the word.</summary>
internal sealed record MeterNumbers(string Day, ClassComparison One, ComparisonTerms Terms, int Codes, string Printed)
{
    // what the pair's own p has to stay below, allowing for all candidates asked at once and for every look
    private WordLevels Levels => One.Basis?.Alone ?? Terms.Levels;

    private double Margin => Terms.MarginOfDb(One.Class);

    private double Half(double tail) => StudentT.Quantile(1 - tail, One.Overall!.Df!.Value) * One.Overall.StandardErrorDb!.Value;

    private double Size => Math.Abs(One.Overall!.DifferenceDb);

    /// <summary>The interval at the level of the verdict leaves out 0, and so does the printed one at 5 %.</summary>
    public bool LeavesOut0 => HasInterval && Size > Half(Levels.Difference / 2) && PrintedLeavesOut0;

    /// <summary>The interval of the two one-sided tests lies inside the margin.</summary>
    public bool LiesWithinMargin => HasInterval && Size + Half(Levels.Equivalence) < Margin;

    /// <summary>Even the nearer limit is at the margin or beyond.</summary>
    public bool LiesBeyondMargin => HasInterval && Size - Half(Levels.Difference / 2) >= Margin;

    /// <summary>There is a standard error above 0.</summary>
    public bool HasInterval => One.Overall is { StandardErrorDb: > 0, Df: > 0 };

    /// <summary>Whether the printed 95 % interval leaves out 0; true where none is printed.</summary>
    public bool PrintedLeavesOut0 => Limits("95 % interval") is not [var low, var high] || low * high > 0;

    /// <summary>Numbers after a name in the printed words.</summary>
    public double[] Limits(string name) =>
        Regex.Match(Printed, name + @" ([+-]?[\d.]+) to ([+-]?[\d.]+)") is { Success: true } found
            ? [.. found.Groups.Values.Skip(1).Select(limit => double.Parse(limit.Value, CultureInfo.InvariantCulture))]
            : [];
}
