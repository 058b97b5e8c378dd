using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The ear: ratings one by one, agreement, forced choices, extra readings, and whether the blind held.</summary>
public static class EarSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        EarFindings ear = day.Ear;
        List<ReportBlock> blocks = [.. Choices(ear), .. Ratings(ear, day.Study), .. Extras(ear, day.Names)];
        if (ear.IsEmpty)
        {
            blocks.Add(new Paragraph(ReportingWords.NothingRatedOrChosen));
        }

        blocks.AddRange(UnblindingWords.Of(day.Study, day.Names.Key).Select(words => new Paragraph(words)));
        return new ReportSection(ReportPart.Ear, "The ear", blocks);
    }

    private static IEnumerable<ReportBlock> Choices(EarFindings ear)
    {
        if (ear.Choices.Count == 0)
        {
            return [];
        }

        return
        [
            new Paragraph(ReportingWords.HowForcedChoicesWerePlanned),
            new ReportTable(
                ["Set", "Question", "Chosen", ReportingWords.WhatItCanShow, ReportingWords.EachPersonAndPlaceHabit, "Word"],
                [.. ear.Choices.Select(Row)]
            ),
        ];
    }

    private static IReadOnlyList<string> Row(ChoiceFinding choice) =>
        [
            $"{choice.Set}",
            ChoiceWords.Question(choice),
            ChoiceWords.Counts(choice),
            ChoiceWords.WhatItCanShow(choice),
            ChoiceWords.Persons(choice),
            ChoiceWords.Word(choice),
        ];

    private static IEnumerable<ReportBlock> Ratings(EarFindings ear, Study study)
    {
        if (ear.Ratings.Count == 0)
        {
            return [];
        }

        return
        [
            new Paragraph(ReportingWords.HowRatingsWereGiven(study)),
            Chart(ear),
            new ReportTable(
                ["Attribute", "Code", "Who, seat", "Score", "Reference at", "Difference"],
                [.. ear.Ratings.SelectMany(rating => rating.Differences.Select(d => Row(rating, d)))]
            ),
            new ReportTable(
                ["Attribute", "Code", "Mean difference", ReportingWords.WhatCanBeSaid],
                [
                    .. ear.Ratings.Select(rating =>
                        (IReadOnlyList<string>)
                            [
                                rating.Attribute,
                                rating.Code,
                                EarWords.Points(rating.MeanPoints),
                                rating.CanDecide ? EarWords.Test(rating) : ReportingWords.NotTested,
                            ]
                    ),
                ]
            ),
            new Points([
                .. EarWords.About(ear.Ratings),
                .. ear.Agreements.Select(EarWords.Agreement),
                .. ear.Concordances.Select(EarWords.Concordance),
                .. Scale,
            ]),
        ];
    }

    private static IntervalChart Chart(EarFindings ear) =>
        new(
            ReportingWords.ExploredRatings,
            "points",
            [
                .. ear.Ratings.SelectMany(rating =>
                    rating.Differences.Select(d => new IntervalRow(
                        $"{rating.Attribute} {rating.Code}: {d.Person}, {d.Seat}",
                        d.Points,
                        $"{EarWords.Points(d.Points)} points",
                        null,
                        null,
                        null
                    ))
                ),
            ]
        )
        {
            Ends = ChartEnds.OfRatings,
        };

    private static IEnumerable<string> Scale =>
        [
            ReportingWords.RatingScale(
                string.Join(
                    "; ",
                    RatingSteps.All.Select(step =>
                        step.Disturbance == step.Control
                            ? $"{step.Points} {step.Control}"
                            : $"{step.Points} {step.Disturbance} / {step.Control}"
                    )
                )
            ),
        ];

    private static IReadOnlyList<string> Row(RatingFinding rating, RaterDifference difference) =>
        [
            rating.Attribute,
            rating.Code,
            $"{difference.Person}, {difference.Seat}",
            FormattableString.Invariant($"{difference.CodePoints:0.##}"),
            FormattableString.Invariant($"{difference.ReferencePoints:0.##}"),
            EarWords.Points(difference.Points),
        ];

    private static IEnumerable<ReportBlock> Extras(EarFindings ear, SpecNames names)
    {
        List<IReadOnlyList<string>> rows = [];
        foreach (ExtraFinding extra in ear.Extras)
        {
            foreach (CodeComparison pair in extra.Comparison.Comparisons)
            {
                rows.AddRange(
                    new (string Name, ClassComparison? Of)[] { ("steady", pair.Classes.Steady), ("impacts", pair.Classes.Impact) }
                        .Where(part => part.Of?.Overall is not null)
                        .Select(part =>
                            (IReadOnlyList<string>)
                                [
                                    extra.Name,
                                    $"{names.Of(pair.Code)} minus {names.Of(pair.Reference)}",
                                    part.Name,
                                    Figures.Difference(part.Of!.Overall),
                                    Figures.Interval95(part.Of.Overall),
                                    $"{extra.Readings}",
                                ]
                        )
                );
            }
        }

        return rows.Count == 0
            ? []
            :
            [
                new Paragraph(ReportingWords.LevelsBesideMainLevel),
                new ReportTable(["Level", "Difference of", "Segments", "Difference, dB", "95 % interval", "Readings"], rows),
            ];
    }
}

/// <summary>
/// Whether the blind held: each person said which code has the feature and why, before the key was opened. A right guess from the sound is
/// a finding; one from something seen is a leak. One guess a person counts; so few are a description, not a test.
/// </summary>
public static class UnblindingWords
{
    /// <summary>The paragraphs; none until every prediction is locked.</summary>
    public static IEnumerable<string> Of(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Predictions.Count == 0 || study.StillToPredict.Any())
        {
            yield break;
        }

        string[] seen = [.. study.Predictions.Where(p => p.Basis == PredictionBasis.Seen).Select(p => p.Person)];
        string blind =
            seen.Length > 0
                ? $"The blind did not hold for {string.Join(" and ", seen)}, who went by something seen or overheard: a leak."
                : "Nobody went by something seen or overheard.";
        if (PredictionScores.Of(PredictionScores.In(study, key)) is not { } scores)
        {
            yield return $"Check of the blind: {blind} {WhyUnknown(key)}: which guesses were right is not known.";
            yield break;
        }

        Prediction[] right = [.. study.Predictions.Where(p => key?.IsControl(p.Feature) == false)];
        yield return $"Check of the blind: {right.Length} of {scores.Count} named a code of a new spec; guessing alone does "
            + $"as well with p {scores.PAtLeast:0.##}: a description, not a test. {blind}{Grounds(right)}";
    }

    private static string WhyUnknown(OpenedKey? key) =>
        key switch
        {
            null => "The key is not open",
            { NamesAllowed: false } => "The key does not agree with the marks or the commitment",
            _ => "The key names no control",
        };

    private static string Grounds(Prediction[] right)
    {
        string[] heard = [.. right.Where(p => p.Basis == PredictionBasis.Sound).Select(p => p.Person)];
        string[] guessed = [.. right.Where(p => p.Basis == PredictionBasis.Guess).Select(p => p.Person)];
        return (heard.Length > 0 ? $" Right by the sound, which is a finding and no leak: {string.Join(" and ", heard)}." : "")
            + (guessed.Length > 0 ? $" Right without grounds: {string.Join(" and ", guessed)}." : "");
    }
}
