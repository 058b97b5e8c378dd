namespace FieldSession.Comparing;

/// <summary>What a comparison shows at the level that its verdict needs; the verdict's words and the report's lean on it alike.</summary>
/// <param name="ShowsDifference">p of "no difference", allowing for all that is asked at once, is below its level.</param>
/// <param name="ShowsEquivalence">p of "beyond the margin", allowing for all that is asked at once, is below its level.</param>
/// <param name="Alpha">The level of a difference (<see cref="ComparisonTerms.Levels"/>), 0..1.</param>
public sealed record Conclusion(bool ShowsDifference, bool ShowsEquivalence, double Alpha)
{
    /// <summary>What a pair shows among all that are asked at once; an unknown p shows nothing.</summary>
    internal static Conclusion Of(PairLine pair, CandidateFamily family, ComparisonTerms terms) =>
        new(family.ShowsDifference(pair), family.ShowsEquivalence(pair), terms.Levels.Difference);
}

/// <summary>
/// The verdict in fixed words (docs/formulas.md, "Verdict"): difference shown, equivalent, both, or undecided, and where the runs cannot
/// carry a verdict the reason for there being none. "No difference" is never said.
/// </summary>
internal static class VerdictWords
{
    /// <summary>Nothing could be compared.</summary>
    public const string NoComparison = "no comparison";

    /// <summary>The words for a pair, among all that are asked at once.</summary>
    public static string Of(PairLine pair, CandidateFamily family, ComparisonTerms terms)
    {
        string? reason = WhyNone(pair, terms);
        return reason is null ? Words(pair, family, terms) + Provisos(pair.Model.Scatter, terms) : $"no verdict: {reason}";
    }

    /// <summary>What the words rest on; null: these runs carry no verdict.</summary>
    public static Conclusion? ConclusionOf(PairLine pair, CandidateFamily family, ComparisonTerms terms) =>
        HasVerdict(pair, terms) ? Conclusion.Of(pair, family, terms) : null;

    /// <summary>Whether the words are that the difference is larger than the margin.</summary>
    public static bool IsLarger(PairLine pair, CandidateFamily family, ComparisonTerms terms) =>
        Math.Abs(pair.Overall.DifferenceDb) > pair.MarginDb
        && ConclusionOf(pair, family, terms) is { ShowsDifference: true, ShowsEquivalence: false }
        && family.POf(pair).Larger < terms.Levels.Difference;

    /// <summary>Whether the words are a verdict, and not the reason for there being none.</summary>
    public static bool HasVerdict(PairLine pair, ComparisonTerms terms) => WhyNone(pair, terms) is null;

    /// <summary>Why these runs carry no verdict; null: they do.</summary>
    private static string? WhyNone(PairLine pair, ComparisonTerms terms)
    {
        Scatter scatter = pair.Model.Scatter;
        return pair switch
        {
            { ConfoundedWith: string what } => $"code and {what} cannot be told apart",
            { Overall.StandardErrorDb: 0 } => ConclusionWords.NoScatterSeen,
            _ when pair.Model.Runs.Length == pair.Model.Counted.Codes.Length => "not bracketed",
            { Overall.StandardErrorDb: null } => "too few runs to see how well they repeat",
            { Overall.HasNoUsableInterval: true } => ConclusionWords.NoUsableInterval,
            _ when scatter is { NuUsed: <= 1, PriorUsed: false } => $"{InWords(pair.Model.Runs.Length)} runs cannot decide alone",
            _ => terms.PlanComplete ? null : "the plan is not driven to its end",
        };
    }

    private static string Words(PairLine pair, CandidateFamily family, ComparisonTerms terms)
    {
        string margin = $"{pair.MarginDb:0.##} dB";
        Conclusion conclusion = Conclusion.Of(pair, family, terms);
        return (conclusion.ShowsDifference, conclusion.ShowsEquivalence) switch
        {
            (true, true) => ConclusionWords.DifferenceShownButSmallerThan(margin),
            (true, false) when IsLarger(pair, family, terms) => ConclusionWords.DifferenceShownAndLargerThan(margin),
            (true, false) => "difference shown",
            (false, true) => $"equivalent within ±{margin}",
            _ => "undecided",
        };
    }

    private static string Provisos(Scatter scatter, ComparisonTerms terms)
    {
        string archive = scatter is { PriorUsed: true, Prior: ArchivePrior prior }
            ? $", with repeatability from {prior.Days} earlier {(prior.Days == 1 ? "day" : "days")}"
            : "";
        return archive + (terms.Looks is { Lengthened: > 0 and int times } ? ConclusionWords.ExtendedTimes(times) : "");
    }

    private static string InWords(int runs) =>
        runs switch
        {
            3 => "three",
            4 => "four",
            5 => "five",
            _ => $"{runs}",
        };
}

/// <summary>Phrases of verdicts, of levels and of energy alike.</summary>
internal static class ConclusionWords
{
    public const string NoScatterNoInterval = "no scatter seen at this display resolution: no interval";
    public const string NoUsableInterval = "no usable interval";
    public const string NoScatterSeen = "no scatter seen at this display resolution";

    public static string ExtendedTimes(int times) => $", extended {times} time{(times == 1 ? "" : "s")}";

    public static string DifferenceShownButSmallerThan(string margin) => $"difference shown, but smaller than {margin}";

    public static string DifferenceShownAndLargerThan(string margin) => $"difference shown and larger than {margin}";
}
