using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The verdict in fixed words (docs/method.md, "Verdict"): difference shown, equivalent, both, or undecided, and where the runs cannot carry a
/// verdict the reason for there being none. "No difference" is never said.
/// </summary>
internal static class VerdictWords
{
    /// <summary>Nothing could be compared.</summary>
    public const string NoComparison = "no comparison";

    private const int HalvedFrom = 3;

    /// <summary>The words for a pair.</summary>
    public static string Of(PairLine pair, ComparisonTerms terms)
    {
        string? reason = WhyNone(pair, terms);
        return reason is null ? Words(pair, Conclusion.Of(pair.Overall, terms.VerdictAlpha)) + Provisos(pair.Model.Scatter, terms) : $"no verdict: {reason}";
    }

    /// <summary>What the words rest on; null: these runs carry no verdict.</summary>
    public static Conclusion? ConclusionOf(PairLine pair, ComparisonTerms terms) =>
        HasVerdict(pair, terms) ? Conclusion.Of(pair.Overall, terms.VerdictAlpha) : null;

    /// <summary>Whether the words are a verdict, and not the reason for there being none.</summary>
    public static bool HasVerdict(PairLine pair, ComparisonTerms terms) => WhyNone(pair, terms) is null;

    /// <summary>Why these runs carry no verdict; null: they do.</summary>
    private static string? WhyNone(PairLine pair, ComparisonTerms terms)
    {
        Scatter scatter = pair.Model.Scatter;
        return pair switch
        {
            { ConfoundedWith: string what } => $"code and {what} cannot be told apart",
            { Overall.StandardErrorDb: 0 } => ComparingWords.NoScatterSeen,
            _ when pair.Model.Runs.Length == pair.Model.Counted.Codes.Length => "not bracketed",
            { Overall.StandardErrorDb: null } => "too few runs to see how well they repeat",
            { Overall.HasNoUsableInterval: true } => ComparingWords.NoUsableInterval,
            _ when scatter is { NuUsed: <= 1, PriorUsed: false } => $"{InWords(pair.Model.Runs.Length)} runs cannot decide alone",
            _ => terms.PlanComplete ? null : "the plan is not driven to its end",
        };
    }

    private static string Words(PairLine pair, Conclusion conclusion)
    {
        string margin = $"{pair.MarginDb:0.####} dB";
        return (conclusion.ShowsDifference, conclusion.ShowsEquivalence) switch
        {
            (true, true) => ComparingWords.DifferenceShownButSmallerThan(margin),
            (true, false) when LowerLimit(pair.Overall, conclusion.Alpha) >= pair.MarginDb => ComparingWords.DifferenceShownAndLargerThan(margin),
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
        string extended = terms.VerdictNumber >= HalvedFrom ? $", extended {terms.VerdictNumber - 1} times" : "";
        return archive + extended;
    }

    private static double LowerLimit(Estimate overall, double alpha) =>
        Math.Abs(overall.DifferenceDb) - StudentT.Quantile(1 - alpha / 2, overall.Df!.Value) * overall.StandardErrorDb!.Value;

    private static string InWords(int runs) => runs switch
    {
        3 => "three",
        4 => "four",
        5 => "five",
        _ => $"{runs}",
    };
}
