using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>How several comparisons that answer one question share its 5 %.</summary>
public enum FamilyRule
{
    /// <summary>There is one comparison only.</summary>
    Alone,

    /// <summary>Each candidate against the control, by the largest |t| of all (<see cref="ManyToOneT"/>).</summary>
    Dunnett,

    /// <summary>Step by step from the smallest p (<see cref="Statistics.Holm"/>): where the plan asks for all pairs, or the correlations have no such form.</summary>
    Holm,
}

/// <summary>p of one comparison, allowing for all that are asked with it; null: unknown.</summary>
/// <param name="Difference">Two-sided, against no difference.</param>
/// <param name="Larger">Two-sided, against a difference as large as the margin, where the difference is larger; 1 where it is not.</param>
/// <param name="Equivalence">Of the two one-sided tests against the margin.</param>
internal sealed record FamilyP(double? Difference, double? Larger, double? Equivalence);

/// <summary>
/// The comparisons that the plan's question asks at once: every candidate against the control, or every pair of codes. Differences are held together
/// by Dunnett's test from the one model, else by Holm; equivalence always by Holm, because its two sides turn the correlations' signs
/// (docs/method.md, "Several candidates").
/// </summary>
internal sealed class CandidateFamily
{
    private readonly List<PairLine> _members;
    private readonly double[]? _loadings;
    private readonly double _df;
    private readonly ComparisonTerms _terms;
    private readonly Lazy<double> _limit;

    private CandidateFamily(List<PairLine> members, ComparisonTerms terms)
    {
        _members = members;
        _terms = terms;
        _df = members.Count == 0 ? 0 : members.Min(line => line.Overall.Df!.Value);
        _loadings = members.Count > 1 && !terms.AsksAllPairs ? LoadingsOf(members) : null;
        _limit = new Lazy<double>(() => ManyToOneT.Limit(terms.Levels.Difference, _loadings!, _df));
    }

    /// <summary>The rule that holds them together.</summary>
    public FamilyRule Rule => _members.Count < 2 ? FamilyRule.Alone : _loadings is null ? FamilyRule.Holm : FamilyRule.Dunnett;

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
                select (first, second));
        }

        return new CandidateFamily(
            [.. asked.Select(pair => PairLine.Of(view, pair.First, pair.Second, terms)).OfType<PairLine>().Where(line => line.Overall.P is not null && line.ConfoundedWith is null)],
            terms);
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

        double equivalence = Holm.Adjust([.. _members.Select(line => line.Overall.PTost!.Value)])[place];
        return Rule == FamilyRule.Dunnett
            ? new FamilyP(Dunnett(p, Math.Abs(overall.DifferenceDb) / error), beyond > 0 ? Dunnett(larger, beyond) : 1, equivalence)
            : new FamilyP(HolmOfAll[place], beyond > 0 ? Math.Min(1, StepOf(place) * larger) : 1, equivalence);
    }

    /// <summary>
    /// The levels that a pair's own p has to stay below for the family's word: those of the intervals that agree with the words (Dunnett: simultaneous
    /// intervals; Holm: those of the step at which the pair was asked).
    /// </summary>
    public WordLevels LevelsOf(PairLine pair)
    {
        WordLevels levels = _terms.Levels;
        int place = PlaceOf(pair);
        if (place < 0 || Size < 2)
        {
            return levels;
        }

        // the family's p is never above Bonferroni's, so neither is the level below that of Bonferroni
        double difference = Rule == FamilyRule.Dunnett
            ? Math.Clamp(StudentT.TwoSidedP(_limit.Value, pair.Overall.Df!.Value), levels.Difference / Size, levels.Difference)
            : levels.Difference / StepOf(place);
        double equivalence = levels.Equivalence / Step([.. _members.Select(line => line.Overall.PTost!.Value)], place, levels.Equivalence);
        return new WordLevels(difference, equivalence);
    }

    private double[] HolmOfAll => field ??= Holm.Adjust([.. _members.Select(line => line.Overall.P!.Value)]);

    // never below the comparison's own p nor above Bonferroni's, whatever the integral's last digits are
    private double Dunnett(double alone, double t) =>
        Math.Clamp(ManyToOneT.Tail(t, _loadings, _df), alone, Math.Min(1, Math.Max(alone, Size * alone)));

    private int PlaceOf(PairLine pair) => _members.FindIndex(line => line.First == pair.First && line.Second == pair.Second);

    private double StepOf(int place) => Step([.. _members.Select(line => line.Overall.P!.Value)], place, _terms.Levels.Difference);

    /// <summary>By how much the level is divided at the step where Holm asks a p, or where it stopped before.</summary>
    private static double Step(double[] p, int place, double level)
    {
        int[] order = [.. Enumerable.Range(0, p.Length).OrderBy(i => p[i])];
        for (int step = 0; step < order.Length; step++)
        {
            if (order[step] == place || p[order[step]] * (order.Length - step) >= level)
            {
                return order.Length - step;
            }
        }

        return 1;
    }

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
}
