using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the ear says, as plain text of 80 columns for the blind summary: codes only.</summary>
public static class EarWords
{
    /// <summary>The lines; none where nothing was rated, chosen or read beside dB(A).</summary>
    public static IReadOnlyList<string> Of(EarFindings ear)
    {
        ArgumentNullException.ThrowIfNull(ear);
        return ear.IsEmpty
            ? []
            :
            [
                "",
                "The ear",
                .. Choices(ear),
                .. Ratings(ear),
                .. ear.Agreements.SelectMany(agreement => PlainLines.Wrapped("  - ", Agreement(agreement))),
                .. ear.Concordances.SelectMany(one => PlainLines.Wrapped("  - ", Concordance(one))),
                .. Extras(ear),
            ];
    }

    /// <summary>A rating difference with its sign: "-0.75".</summary>
    public static string Points(double points) => points.ToString("+0.00;-0.00;0.00", CultureInfo.CurrentCulture);

    /// <summary>
    /// What the ratings of one attribute and code come to; empty where they are too few for a test, which <see cref="About"/> says once.
    /// </summary>
    public static string Test(RatingFinding rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return rating.CanDecide
            ? $"{rating.Word}, p Holm {Figures.Probability(rating.PHolm)}; signs {rating.Signs.Plus} up {rating.Signs.Minus} down"
            : "";
    }

    /// <summary>What holds for the ratings as a whole: what they were tested against, and which are too few for any test.</summary>
    public static IEnumerable<string> About(IReadOnlyList<RatingFinding> ratings)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        foreach (
            IGrouping<(string Reference, double Points), RatingFinding> anchored in ratings
                .Where(rating => rating.AgainstPoints is not null)
                .GroupBy(rating => (rating.Reference, rating.AgainstPoints!.Value))
        )
        {
            yield return ReviewingWords.RatedAgainstFixedScore(anchored.Key.Reference, Plain(anchored.Key.Points));
        }

        RatingFinding[] few = [.. ratings.Where(rating => !rating.CanDecide)];
        if (few.Length > 0)
        {
            yield return ReviewingWords.TooFewRatings(
                few.Length == ratings.Count ? null : string.Join(", ", few.Select(rating => rating.Attribute).Distinct())
            );
        }

        if (few.Length < ratings.Count)
        {
            yield return ReviewingWords.HolmOverRatings(ratings.Count - few.Length);
        }
    }

    /// <summary>How far two raters agree.</summary>
    public static string Agreement(AgreementFinding agreement)
    {
        ArgumentNullException.ThrowIfNull(agreement);
        var found = agreement.Agreement;
        string sd = found.SdDifference is { } scatter ? $", SD {scatter:0.00}" : "";
        string kappa = found.QuadraticKappa is { } known ? $", weighted kappa {known:0.00}" : "";
        return $"{agreement.First} minus {agreement.Second} on {found.Count} ratings of the same runs: mean "
            + $"{Points(found.MeanDifference)}{sd}, "
            + $"within half a point {found.WithinShare * 100:0} %{kappa}. Two people are two cases, not a panel.";
    }

    /// <summary>Whether raters rank the codes alike.</summary>
    public static string Concordance(ConcordanceFinding one)
    {
        ArgumentNullException.ThrowIfNull(one);
        string p = one.Concordance.P is { } known ? $", p {Figures.Probability(known)}" : "";
        return $"{one.Attribute}: {one.Raters.Count} raters rank {one.Codes.Count} codes with concordance W {one.Concordance.W:0.00}{p}";
    }

    private static string Plain(double points) => points.ToString("0.##", CultureInfo.CurrentCulture);

    private static IEnumerable<string> Choices(EarFindings ear) =>
        ear.Choices.SelectMany(choice =>
            PlainLines.Wrapped($"  set {choice.Set}: ", $"{ChoiceWords.Sentence(choice)}. {ChoiceWords.Persons(choice)}")
        );

    private static List<string> Ratings(EarFindings ear)
    {
        List<string> lines = [];
        if (ear.Ratings.Count > 0)
        {
            lines.Add("  ratings, code minus reference, points");
            lines.AddRange(
                ear.Ratings.SelectMany(rating =>
                    PlainLines.Wrapped(
                        $"    {PlainLines.Left(rating.Attribute, 20)}{rating.Code} {PlainLines.Right(Points(rating.MeanPoints), 6)}  ",
                        $"{string.Join(", ", rating.Differences.Select(d => $"{d.Person} ({d.Seat}) {Points(d.Points)}"))}"
                            + $"{(rating.CanDecide ? $"; {Test(rating)}" : "")}"
                    )
                )
            );
            lines.AddRange(About(ear.Ratings).SelectMany(words => PlainLines.Wrapped("  - ", words)));
        }

        if (ear.Covered > 0)
        {
            lines.AddRange(
                PlainLines.Wrapped("  - ", $"{ear.Covered} ratings are covered until the others have stored theirs, or 'ratings closed'")
            );
        }

        return lines;
    }

    private static IEnumerable<string> Extras(EarFindings ear) =>
        from extra in ear.Extras
        from pair in extra.Comparison.Comparisons
        let all = pair.Classes.Steady ?? pair.Classes.All
        from line in PlainLines.Wrapped(
            $"  {extra.Name}: ",
            $"{pair.Code} minus {pair.Reference} {Figures.Difference(all?.Overall)}, 95 % interval "
                + $"{Figures.Interval95(all?.Overall)}, {extra.Readings} readings; apart from dB(A), explored"
        )
        select line;
}

/// <summary>What an amended question would say, beside the verdict that stays with the question before.</summary>
public static class ChosenAfterWords
{
    /// <summary>The lines for a study; empty where nothing was amended after a comparison could be seen.</summary>
    public static IEnumerable<string> Of(Study study, MeasuredDay day)
    {
        string[] sentences = [.. Sentences(study, day)];
        return sentences.Length == 0
            ? []
            : ["", .. PlainLines.Wrapped("", sentences[0]), .. sentences[1..].SelectMany(line => PlainLines.Wrapped("  ", line))];
    }

    /// <summary>The same, not yet wrapped: what it is, then a sentence for every candidate; empty where nothing was amended so.</summary>
    public static IEnumerable<string> Sentences(Study study, MeasuredDay day)
    {
        ArgumentNullException.ThrowIfNull(study);
        return StudyTerms.ChosenAfter(study) is { } terms ? Sentences(BlindComparison.Of(day, terms), terms) : [];
    }

    private static IEnumerable<string> Sentences(Comparison chosen, ComparisonTerms terms)
    {
        MainMeasure measure = terms.MainMeasure ?? MainMeasure.Steady;
        MeasureClass? main = ComparisonTerms.MainClassOf(measure);
        string on = $"{MainMeasureWords.Of(measure, terms.MainSegments)}, margin {Figures.MarginDb(terms.MarginOfDb(main))} dB";
        return
        [
            ReviewingWords.ChosenAfterTheData,
            .. chosen.Main.Select(pair =>
                $"{pair.Code} against {pair.Reference}, on {on}: {Figures.Difference(pair.Classes.Of(main)?.Overall)} dB, "
                + $"{pair.Classes.Of(main)?.Verdict ?? Figures.Unknown}"
            ),
        ];
    }
}
