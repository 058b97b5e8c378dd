using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>How far two raters agree on what both rated in the same runs.</summary>
/// <param name="First">One rater.</param>
/// <param name="Second">The other.</param>
/// <param name="Agreement">Mean and scatter of first minus second, share within half a point, weighted kappa.</param>
public sealed record AgreementFinding(string First, string Second, RaterAgreement.Result Agreement)
{
    /// <summary>Scores this close count as the same, points (common practice, no source).</summary>
    public const double TolerancePoints = 0.5;

    /// <summary>Every pair of raters who rated something together.</summary>
    public static IEnumerable<AgreementFinding> Of(IReadOnlyList<RatedScore> scores)
    {
        ArgumentNullException.ThrowIfNull(scores);
        string[] raters = [.. scores.Select(s => s.Person).Distinct()];
        return
            from i in Enumerable.Range(0, raters.Length)
            from j in Enumerable.Range(i + 1, Math.Max(0, raters.Length - i - 1))
            let pairs = Pairs(scores, raters[i], raters[j])
            where pairs.Length > 0
            select new AgreementFinding(raters[i], raters[j], RaterAgreement.Of(
                [.. pairs.Select(p => p.First)], [.. pairs.Select(p => p.Second)], TolerancePoints));
    }

    // In one run two people sit in two seats; where both rated from the same seats on other runs of a number, seat goes with seat.
    private static (double First, double Second)[] Pairs(IReadOnlyList<RatedScore> scores, string first, string second)
    {
        IEnumerable<(string Attribute, int Run, int Place, double Points)> Of(string person) => scores
            .Where(s => s.Person == person)
            .GroupBy(s => (s.Attribute, s.Day, s.Run))
            .SelectMany(same => same.OrderBy(s => s.Seat, StringComparer.Ordinal).Select((s, place) => (s.Attribute, s.Run, place, s.Points)));
        return
        [
            .. from one in Of(first)
               join other in Of(second) on (one.Attribute, one.Run, one.Place) equals (other.Attribute, other.Run, other.Place)
               select (one.Points, other.Points),
        ];
    }
}

/// <summary>Whether the raters rank three codes or more alike for one attribute.</summary>
/// <param name="Attribute">What was rated.</param>
/// <param name="Codes">The codes ranked.</param>
/// <param name="Raters">Who ranked all of them.</param>
/// <param name="Concordance">Kendall's W, and p where there are more than seven codes.</param>
public sealed record ConcordanceFinding(string Attribute, IReadOnlyList<string> Codes, IReadOnlyList<string> Raters, KendallW.Result Concordance)
{
    /// <summary>The finding; null with fewer than three codes, fewer than two raters of all of them, or nothing but ties.</summary>
    public static ConcordanceFinding? Of(
        string attribute, IReadOnlyList<string> codes, IReadOnlyList<RatedScore> scores, string? anchored, double anchorPoints)
    {
        ArgumentNullException.ThrowIfNull(codes);
        ArgumentNullException.ThrowIfNull(scores);
        var rows = scores
            .Where(s => s.Attribute == attribute)
            .GroupBy(s => s.Person)
            .Select(person => (Person: person.Key, Means: codes.Select(code => Mean(person, code, anchored, anchorPoints)).ToArray()))
            .Where(row => row.Means.All(mean => mean is not null))
            .ToArray();
        return codes.Count >= 3 && rows.Length >= 2 && KendallW.Of([.. rows.Select(row => row.Means.Select(mean => mean!.Value).ToArray())]) is { } w
            ? new ConcordanceFinding(attribute, codes, [.. rows.Select(row => row.Person)], w)
            : null;
    }

    private static double? Mean(IEnumerable<RatedScore> scores, string code, string? anchored, double anchorPoints)
    {
        double[] given = [.. scores.Where(s => s.Code == code).Select(s => s.Points)];
        return given.Length > 0 ? given.Average() : code == anchored ? anchorPoints : null;
    }
}
