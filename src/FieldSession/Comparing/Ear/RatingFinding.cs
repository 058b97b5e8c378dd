using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// How one code is rated against another for one attribute: a number for every rater, seat and day, and what so few numbers
/// can say. Test: all patterns of signs (docs/formulas.md); beside it the sign test.
/// </summary>
/// <param name="Attribute">What was rated.</param>
/// <param name="Code">The code.</param>
/// <param name="Reference">The code it is rated against.</param>
/// <param name="Differences">Code minus reference, one for every rater, seat and day.</param>
/// <param name="MeanPoints">Their mean, points; negative: rated lower.</param>
/// <param name="P">Two-sided p over all patterns of signs.</param>
/// <param name="SmallestP">The smallest p that so many differences can give.</param>
/// <param name="Signs">How many are above and below 0, and the sign test's p.</param>
public sealed record RatingFinding(
    string Attribute,
    string Code,
    string Reference,
    IReadOnlyList<RaterDifference> Differences,
    double MeanPoints,
    double P,
    double SmallestP,
    SignTest.Result Signs
)
{
    private const double Alpha = 0.05;
    private const int Draws = 100_000;
    private const int Seed = 20;

    /// <summary>p after Holm over all that was rated and can be tested; null: too few for a test.</summary>
    public double? PHolm { get; init; }

    /// <summary>The smallest <see cref="PHolm"/> that so many differences can give; null: too few for a test.</summary>
    public double? SmallestPHolm { get; init; }

    /// <summary>The fixed score that the reference is at where nobody rated it; null: its own ratings are taken.</summary>
    public double? AgainstPoints { get; init; }

    /// <summary>Whether so many differences can come to 5 % at all, with everything else that was rated.</summary>
    public bool CanDecide => SmallestPHolm <= Alpha;

    /// <summary>What can honestly be said.</summary>
    public string Word =>
        (CanDecide, PHolm <= Alpha, MeanPoints < 0) switch
        {
            (false, _, _) => EarRemarkWords.TooFewForTest,
            (_, false, _) => EarRemarkWords.NoDifferenceShown,
            (_, _, true) => "rated lower",
            _ => "rated higher",
        };

    /// <summary>The finding; null where nobody rated the code.</summary>
    /// <param name="attribute">What was rated.</param>
    /// <param name="code">The code.</param>
    /// <param name="reference">The code it is rated against.</param>
    /// <param name="scores">Every score of the attribute.</param>
    /// <param name="anchored">A code that is at a fixed score where nobody rated it; null: none.</param>
    /// <param name="anchorPoints">That score, points.</param>
    public static RatingFinding? Of(
        string attribute,
        string code,
        string reference,
        IReadOnlyList<RatedScore> scores,
        string? anchored,
        double anchorPoints
    )
    {
        ArgumentNullException.ThrowIfNull(scores);
        RaterDifference[] differences =
        [
            .. ByRater(scores.Where(s => s.Attribute == attribute), (code, reference), anchored, anchorPoints),
        ];
        if (differences.Length == 0)
        {
            return null;
        }

        double[] points = [.. differences.Select(d => d.Points)];
        Random lot = new(Seed);
        SignFlip.Result flips =
            points.Length <= SignFlip.MostEnumerated ? SignFlip.Exact(points) : SignFlip.Drawn(points, () => lot.Next(2) == 0, Draws);
        bool isFixed = reference == anchored && !scores.Any(score => score.Attribute == attribute && score.Code == reference);
        RatingFinding finding = new RatingFinding(
            attribute,
            code,
            reference,
            differences,
            points.Average(),
            flips.TwoSided,
            flips.SmallestTwoSided,
            SignTest.Of(points)
        )
        {
            AgainstPoints = isFixed ? anchorPoints : null,
        };
        return Together([finding])[0];
    }

    private static IEnumerable<RaterDifference> ByRater(
        IEnumerable<RatedScore> scores,
        (string Code, string Reference) pair,
        string? anchored,
        double anchorPoints
    ) =>
        from rater in scores.GroupBy(s => (s.Person, s.Seat, s.Day))
        let first = Mean(rater, pair.Code, anchored, anchorPoints)
        let second = Mean(rater, pair.Reference, anchored, anchorPoints)
        where first is not null && second is not null && rater.Any(s => s.Code == pair.Code || s.Code == pair.Reference)
        select new RaterDifference(rater.Key.Person, rater.Key.Seat, rater.Key.Day, first.Value, second.Value);

    /// <summary>
    /// The findings with Holm over all of them that so few numbers allow a test of at all. Which these are follows from how many
    /// differences are not 0, never from their signs, so the choice cannot make a result.
    /// </summary>
    /// <param name="findings">One for every attribute and code.</param>
    public static IReadOnlyList<RatingFinding> Together(IReadOnlyList<RatingFinding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        RatingFinding[] tested = [.. findings.Where(finding => finding.SmallestP <= Alpha)];
        double[] adjusted = Holm.Adjust([.. tested.Select(finding => finding.P)]);
        double[] smallest = Holm.Adjust([.. tested.Select(finding => finding.SmallestP)]);
        return
        [
            .. findings.Select(finding =>
                Array.IndexOf(tested, finding) is >= 0 and var place
                    ? finding with
                    {
                        PHolm = adjusted[place],
                        SmallestPHolm = smallest[place],
                    }
                    : finding
            ),
        ];
    }

    private static double? Mean(IEnumerable<RatedScore> scores, string code, string? anchored, double anchorPoints)
    {
        double[] given = [.. scores.Where(s => s.Code == code).Select(s => s.Points)];
        return given.Length > 0 ? given.Average()
            : code == anchored ? anchorPoints
            : null;
    }
}

/// <summary>One rater's difference from one seat on one day.</summary>
/// <param name="Person">Who rates.</param>
/// <param name="Seat">Where they sat.</param>
/// <param name="Day">The day.</param>
/// <param name="CodePoints">Mean score of the code's runs, points.</param>
/// <param name="ReferencePoints">Mean score of the reference's runs, or what it is at, points.</param>
public sealed record RaterDifference(string Person, string Seat, string Day, double CodePoints, double ReferencePoints)
{
    /// <summary>Code minus reference, points.</summary>
    public double Points => CodePoints - ReferencePoints;
}

/// <summary>One score as the comparison sees it: who gave it from where, in which run, on which code.</summary>
/// <param name="Person">Who rates.</param>
/// <param name="Seat">Where they sat.</param>
/// <param name="Day">The day; differences are taken within a day.</param>
/// <param name="Run">Number of the run.</param>
/// <param name="Code">The code of the run.</param>
/// <param name="Attribute">What is rated.</param>
/// <param name="Points">The score, points.</param>
public sealed record RatedScore(string Person, string Seat, string Day, int Run, string Code, string Attribute, double Points);

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
        return from i in Enumerable.Range(0, raters.Length)
            from j in Enumerable.Range(i + 1, Math.Max(0, raters.Length - i - 1))
            let pairs = Pairs(scores, raters[i], raters[j])
            where pairs.Length > 0
            select new AgreementFinding(
                raters[i],
                raters[j],
                RaterAgreement.Of([.. pairs.Select(p => p.First)], [.. pairs.Select(p => p.Second)], TolerancePoints)
            );
    }

    // In one run two people sit in two seats; where both rated from the same seats on other runs of a number, seat goes with seat.
    private static (double First, double Second)[] Pairs(IReadOnlyList<RatedScore> scores, string first, string second)
    {
        IEnumerable<(string Attribute, int Run, int Place, double Points)> Of(string person) =>
            scores
                .Where(s => s.Person == person)
                .GroupBy(s => (s.Attribute, s.Day, s.Run))
                .SelectMany(same =>
                    same.OrderBy(s => s.Seat, StringComparer.Ordinal).Select((s, place) => (s.Attribute, s.Run, place, s.Points))
                );
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
public sealed record ConcordanceFinding(
    string Attribute,
    IReadOnlyList<string> Codes,
    IReadOnlyList<string> Raters,
    KendallW.Result Concordance
)
{
    /// <summary>The finding; null with fewer than three codes, fewer than two raters of all of them, or nothing but ties.</summary>
    public static ConcordanceFinding? Of(
        string attribute,
        IReadOnlyList<string> codes,
        IReadOnlyList<RatedScore> scores,
        string? anchored,
        double anchorPoints
    )
    {
        ArgumentNullException.ThrowIfNull(codes);
        ArgumentNullException.ThrowIfNull(scores);
        var rows = scores
            .Where(s => s.Attribute == attribute)
            .GroupBy(s => s.Person)
            .Select(person => (Person: person.Key, Means: codes.Select(code => Mean(person, code, anchored, anchorPoints)).ToArray()))
            .Where(row => row.Means.All(mean => mean is not null))
            .ToArray();
        return
            codes.Count >= 3
            && rows.Length >= 2
            && KendallW.Of([.. rows.Select(row => row.Means.Select(mean => mean!.Value).ToArray())]) is { } w
            ? new ConcordanceFinding(attribute, codes, [.. rows.Select(row => row.Person)], w)
            : null;
    }

    private static double? Mean(IEnumerable<RatedScore> scores, string code, string? anchored, double anchorPoints)
    {
        double[] given = [.. scores.Where(s => s.Code == code).Select(s => s.Points)];
        return given.Length > 0 ? given.Average()
            : code == anchored ? anchorPoints
            : null;
    }
}
