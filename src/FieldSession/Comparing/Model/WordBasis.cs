using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// What the word of a comparison rests on: its p among all that are asked at once, the level they need, and the intervals that agree with
/// the word.
/// </summary>
/// <param name="Rule">How the comparisons that are asked at once share the level.</param>
/// <param name="Comparisons">How many are asked at once.</param>
/// <param name="PDifference">p of the difference, allowing for all of them.</param>
/// <param name="PEquivalence">p of equivalence, allowing for all of them.</param>
/// <param name="Asked">The levels that those p have to stay below: less than 5 %, because looking costs (<see cref="Looks"/>).</param>
/// <param name="Alone">The levels that the comparison's own p would have to stay below for the same word.</param>
/// <param name="LowDb">Lower end of the interval at <paramref name="Alone"/>'s level of a difference, dB: it leaves out 0 exactly where a
/// difference is shown.</param>
/// <param name="HighDb">Its upper end, dB.</param>
/// <param name="LowEquivalenceDb">Lower end of the interval that lies within the margin exactly where equivalence is shown, dB.</param>
/// <param name="HighEquivalenceDb">Its upper end, dB.</param>
/// <param name="Lengthened">How often the order was lengthened after a comparison could be seen.</param>
public sealed record WordBasis(
    FamilyRule Rule,
    int Comparisons,
    double PDifference,
    double PEquivalence,
    WordLevels Asked,
    WordLevels Alone,
    double LowDb,
    double HighDb,
    double LowEquivalenceDb,
    double HighEquivalenceDb,
    int Lengthened
)
{
    /// <summary>What a pair's word rests on; null: p is not known.</summary>
    internal static WordBasis? Of(PairLine pair, CandidateFamily family, ComparisonTerms terms)
    {
        if (
            pair.Overall is not { StandardErrorDb: double error, Df: double df, DifferenceDb: double difference }
            || family.POf(pair) is not { Difference: double p, Equivalence: double equivalence }
        )
        {
            return null;
        }

        WordLevels alone = family.LevelsOf(pair);
        double half = StudentT.Quantile(1 - alone.Difference / 2, df) * error;
        double halfEquivalence = StudentT.Quantile(1 - alone.Equivalence, df) * error;
        return new WordBasis(
            family.Rule,
            Math.Max(1, family.Size),
            p,
            equivalence,
            terms.Levels,
            alone,
            difference - half,
            difference + half,
            difference - halfEquivalence,
            difference + halfEquivalence,
            terms.Looks?.Lengthened ?? 0
        );
    }
}
