using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>How several comparisons that answer one question share its 5 %.</summary>
public enum FamilyRule
{
    /// <summary>There is one comparison only.</summary>
    Alone,

    /// <summary>Each candidate against the control, by the largest |t| of all (<see cref="ManyToOneT"/>).</summary>
    Dunnett,

    /// <summary>
    /// Step by step from the smallest p (<see cref="HolmOfTwos"/>): where the plan asks for all pairs, or the correlations have no such
    /// form.
    /// </summary>
    Holm,
}

/// <summary>p of one comparison, allowing for all that are asked with it; null: unknown.</summary>
/// <param name="Difference">Two-sided, against no difference.</param>
/// <param name="Larger">Two-sided, against a difference as large as the margin, where the difference is larger; 1 where it is not.</param>
/// <param name="Equivalence">Of the two one-sided tests against the margin.</param>
internal sealed record FamilyP(double? Difference, double? Larger, double? Equivalence);

/// <summary>
/// The comparisons that the plan's question asks at once: every candidate against the control, or every pair of codes. Of each, "no
/// difference" and "as large as the margin" can't both be true, so a study has as many chances of a wrong word as comparisons, whichever
/// word is wrong. Dunnett's test from the one model holds differences, its share of each comparison an equivalence; else Holm's steps hold
/// both (docs/formulas.md, "Several candidates").
/// </summary>
internal sealed class CandidateFamily
{
    private readonly List<PairLine> _members;
    private readonly Lazy<double[]?> _loadings;
    private readonly double _df;
    private readonly ComparisonTerms _terms;
    private readonly Lazy<double> _limit;

    // the integral is dear, and the words, the intervals and the table ask for the same few
    private readonly Dictionary<double, double> _tails = [];

    private CandidateFamily(List<PairLine> members, ComparisonTerms terms)
    {
        _members = members;
        _terms = terms;
        _df = members.Count == 0 ? 0 : members.Min(line => line.Overall.Df!.Value);
        _loadings = new Lazy<double[]?>(() => members.Count > 1 && !terms.AsksAllPairs ? LoadingsOf(members) : null);
        _limit = new Lazy<double>(() => ManyToOneT.Limit(terms.Levels.Difference, _loadings.Value!, _df));
    }

    /// <summary>The rule that holds them together.</summary>
    public FamilyRule Rule =>
        _members.Count < 2 ? FamilyRule.Alone
        : _loadings.Value is null ? FamilyRule.Holm
        : FamilyRule.Dunnett;

    /// <summary>How many comparisons are held together.</summary>
    public int Size => _members.Count;

    /// <summary>How many codes they compare.</summary>
    public int Codes => _members.SelectMany(line => new[] { line.First, line.Second }).Distinct().Count();

    /// <summary>The family of a view.</summary>
    /// <param name="view">The view; null: nothing to compare.</param>
    /// <param name="reference">The control's place among the day's codes.</param>
    /// <param name="terms">Margins, levels, and whether all pairs are asked.</param>
    public static CandidateFamily Of(ClassView? view, int reference, ComparisonTerms terms)
    {
        int[] codes = view?.Model?.Counted.Codes ?? [];
        IEnumerable<(int First, int Second)> asked = codes.Where(code => code != reference).Select(code => (code, reference));
        if (terms.AsksAllPairs)
        {
            asked = asked.Concat(
                from first in codes
                from second in codes
                where first < second && first != reference && second != reference
                select (first, second)
            );
        }

        return new CandidateFamily(
            [
                .. asked
                    .Select(pair => PairLine.Of(view, pair.First, pair.Second, terms))
                    .OfType<PairLine>()
                    .Where(line => line.Overall.P is not null && line.ConfoundedWith is null),
            ],
            terms
        );
    }

    /// <summary>p of a pair within the family; of one that does not belong to it, its own.</summary>
    public FamilyP POf(PairLine pair)
    {
        Estimate overall = pair.Overall;
        if (overall is not { P: double p, StandardErrorDb: double error, Df: double df })
        {
            return new FamilyP(null, null, null);
        }

        double beyond = (Math.Abs(overall.DifferenceDb) - pair.MarginDb) / error;
        double larger = beyond > 0 ? StudentT.TwoSidedP(beyond, df) : 1;
        int place = PlaceOf(pair);
        if (place < 0 || Size < 2)
        {
            return new FamilyP(p, larger, overall.PTost);
        }

        if (Rule == FamilyRule.Dunnett)
        {
            double equivalence = Math.Min(1, Size * overall.PTost!.Value);
            return new FamilyP(Dunnett(p, Math.Abs(overall.DifferenceDb) / error), beyond > 0 ? Dunnett(larger, beyond) : 1, equivalence);
        }

        ((double[] differences, double[] equivalences), WordLevels levels) = (Steps.Adjusted, _terms.Levels);
        return new FamilyP(
            Math.Min(1, differences[place] * levels.Difference),
            beyond > 0 ? Math.Min(1, Steps.Divisors.Difference[place] * larger) : 1,
            Math.Min(1, equivalences[place] * levels.Equivalence)
        );
    }

    /// <summary>Whether a pair shows a difference: what <see cref="POf"/> says, without the integral where it is not needed.</summary>
    public bool ShowsDifference(PairLine pair)
    {
        double level = _terms.Levels.Difference;
        if (pair.Overall.P is not double alone || alone >= level)
        {
            return false;
        }

        // the family's p is never above Bonferroni's
        return Size * alone < level || POf(pair).Difference < level;
    }

    /// <summary>Whether a pair shows equivalence, likewise.</summary>
    public bool ShowsEquivalence(PairLine pair)
    {
        double level = _terms.Levels.Equivalence;
        if (pair.Overall.PTost is not double alone || alone >= level)
        {
            return false;
        }

        return Size * alone < level || (Rule != FamilyRule.Dunnett && POf(pair).Equivalence < level);
    }

    /// <summary>
    /// The levels that a pair's own p has to stay below for the family's word: those of the intervals that agree with the words (Dunnett:
    /// simultaneous intervals; Holm: those of the step at which the pair was asked).
    /// </summary>
    public WordLevels LevelsOf(PairLine pair)
    {
        WordLevels levels = _terms.Levels;
        int place = PlaceOf(pair);
        if (place < 0 || Size < 2)
        {
            return levels;
        }

        if (Rule == FamilyRule.Holm)
        {
            return new WordLevels(
                levels.Difference / Steps.Divisors.Difference[place],
                levels.Equivalence / Steps.Divisors.Equivalence[place]
            );
        }

        // the family's p is never above Bonferroni's, so neither is the level below that of Bonferroni
        double difference = Math.Clamp(
            StudentT.TwoSidedP(_limit.Value, pair.Overall.Df!.Value),
            levels.Difference / Size,
            levels.Difference
        );
        return new WordLevels(difference, levels.Equivalence / Size);
    }

    private HolmSteps Steps => field ??= HolmSteps.Of(_members, _terms.Levels);

    // never below the comparison's own p nor above Bonferroni's, whatever the integral's last digits are
    private double Dunnett(double alone, double t) => Math.Clamp(TailAt(t), alone, Math.Min(1, Math.Max(alone, Size * alone)));

    private double TailAt(double t) =>
        _tails.TryGetValue(t, out double known) ? known : _tails[t] = ManyToOneT.Tail(t, _loadings.Value, _df);

    private int PlaceOf(PairLine pair) => _members.FindIndex(line => line.First == pair.First && line.Second == pair.Second);

    // the variance of a difference of differences is that of the candidates' own difference, from the same model
    private static double[]? LoadingsOf(List<PairLine> members)
    {
        double[,] correlations = new double[members.Count, members.Count];
        for (int i = 0; i < members.Count; i++)
        {
            correlations[i, i] = 1;
            for (int j = 0; j < i; j++)
            {
                (PairLine one, PairLine other) = (members[i], members[j]);
                Estimate between = one.Model.Line(one.Model.Contrast(one.First, other.First), one.Model.AllColumns, one.MarginDb);
                (double si, double sj) = (one.Overall.StandardErrorDb!.Value, other.Overall.StandardErrorDb!.Value);
                double apart = between.StandardErrorDb ?? 0;
                correlations[i, j] = correlations[j, i] = Math.Clamp((si * si + sj * sj - apart * apart) / (2 * si * sj), -1, 1);
            }
        }

        return members.Count < 2 ? null : OneFactor.Loadings(correlations);
    }

    /// <summary>Both questions on every comparison, step by step, p in units of the levels.</summary>
    private sealed record HolmSteps((double[] Difference, double[] Equivalence) Adjusted, (int[] Difference, int[] Equivalence) Divisors)
    {
        public static HolmSteps Of(List<PairLine> members, WordLevels levels)
        {
            double[] differences = [.. members.Select(line => line.Overall.P!.Value / levels.Difference)];
            double[] equivalences = [.. members.Select(line => line.Overall.PTost!.Value / levels.Equivalence)];
            return new HolmSteps(HolmOfTwos.Adjust(differences, equivalences), HolmOfTwos.Divisors(differences, equivalences));
        }
    }
}
