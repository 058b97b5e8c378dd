using System.Collections.Immutable;
using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>What is told of a code against the reference over one class of segments, line by line, wherever it is shown.</summary>
public static class ClassFigures
{
    private static ImmutableArray<ClassFigure> Always { get; } =
    [
        new("difference", one => Figures.Difference(one.Overall)),
        Interval95,
        Interval90,
        new(
            ReviewingWords.StandardErrorAndFreedom,
            one => one.Overall?.Df is { } df ? $"{Figures.Error(one.Overall)}, {Figures.Db(df)}" : Figures.Unknown
        ),
        new(ReviewingWords.ProbabilityIfNoDifference, one => Figures.Probability(one.Overall?.P)) { NeedsPlanEnd = true },
        new(ReviewingWords.ProbabilityIfBeyondMargin, one => Figures.Probability(one.Overall?.PTost)) { NeedsPlanEnd = true },
        new(ReviewingWords.CouldHaveShown, one => Figures.CouldShow(one.CouldShow)),
        new("runs, segments", one => $"{one.RunsCounted}, {one.SegmentsCompared}"),
        new(ReviewingWords.RunAndReadingSpread, one => $"{Figures.FineDb(one.SRunUsedDb)}, {Figures.FineDb(one.SEDb)}"),
        new(ReviewingWords.DriftPerHour, Drift),
        new(ReviewingWords.MoreRunsPerCode, MoreRuns) { NeedsPlanEnd = true },
    ];

    private static ClassFigure Interval95 =>
        new("95 % interval", one => Figures.Interval95(one.Overall)) { UnfinishedLabel = "95 % unfinished" };

    private static ClassFigure Interval90 =>
        new("90 % interval", one => Figures.Interval90(one.Overall)) { UnfinishedLabel = "90 % unfinished" };

    // before the plan's end nothing is said that a p is behind
    private static ImmutableArray<ClassFigure> Unfinished { get; } =
    [.. Always.Where(figure => !figure.NeedsPlanEnd).Select(figure => figure with { Label = figure.UnfinishedLabel ?? figure.Label })];

    /// <summary>The lines for a class, the difference first; some days have some more.</summary>
    public static ImmutableArray<ClassFigure> Of(ClassComparison clean)
    {
        ArgumentNullException.ThrowIfNull(clean);
        return
        [
            .. clean.IsUnfinished ? Unfinished : Always,
            .. clean.Basis is { Comparisons: > 1 }
                ? new[] { new ClassFigure(ReviewingWords.ProbabilityAmongAll, one => Figures.Probability(one.Basis?.PDifference)) }
                : [],
            .. clean.OrderTest is null
                ? []
                : new[] { new ClassFigure(ReviewingWords.ProbabilityOfDrivenOrder, one => Figures.Probability(one.OrderTest?.P)) },
            .. clean.RouteEnergy is null
                ? []
                : new[] { new ClassFigure(ReviewingWords.LevelOfExposure, one => Figures.Difference(one.RouteEnergy?.Overall)) },
        ];
    }

    private static string Drift(ClassComparison one) =>
        one.Drift switch
        {
            null => Figures.Unknown,
            { StandardErrorDbPerHour: null } => Figures.SignedFineDb(one.Drift.BDbPerHour),
            { StandardErrorDbPerHour: { } error } => $"{Figures.SignedFineDb(one.Drift.BDbPerHour)} (SE {Figures.FineDb(error)})",
        };

    /// <summary>Unknown and 'not within 10' differ: without an interval nothing can be said at all.</summary>
    private static string MoreRuns(ClassComparison one) =>
        one.Overall?.StandardErrorDb is null ? Figures.Unknown
        : one.Conclusion is { ShowsDifference: true } or { ShowsEquivalence: true } ? ReviewingWords.NoMoreRunsNeeded
        : $"{Figures.Count(one.MoreRuns?.AsSeen, "> 10")}{(one.MoreRuns?.Chance is { } chance ? $" ({100 * chance:0} %)" : "")}"
            + $", cautious {Figures.Count(one.MoreRuns?.Cautious, "> 10")}";
}

/// <summary>One line of a class.</summary>
/// <param name="Label">What it tells.</param>
/// <param name="Cell">The figure in words; unknown is said.</param>
public sealed record ClassFigure(string Label, Func<ClassComparison, string> Cell)
{
    /// <summary>Whether a p is behind it, so that nothing is said before the plan's end.</summary>
    public bool NeedsPlanEnd { get; init; }

    /// <summary>What it is called before the plan's end; null: the same.</summary>
    public string? UnfinishedLabel { get; init; }
}
