using FieldSession.Comparing;
using FieldSession.Measures;
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
                [.. ear.Choices.Select(Row)]),
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
                [.. ear.Ratings.SelectMany(rating => rating.Differences.Select(d => Row(rating, d)))]),
            new ReportTable(
                ["Attribute", "Code", "Mean difference", ReportingWords.WhatCanBeSaid],
                [.. ear.Ratings.Select(rating => (IReadOnlyList<string>)[rating.Attribute, rating.Code, EarWords.Points(rating.MeanPoints), rating.CanDecide ? EarWords.Test(rating) : ReportingWords.NotTested])]),
            new Points([.. EarWords.About(ear.Ratings), .. ear.Agreements.Select(EarWords.Agreement), .. ear.Concordances.Select(EarWords.Concordance), .. Scale]),
        ];
    }

    private static IntervalChart Chart(EarFindings ear) => new(
        ReportingWords.ExploredRatings,
        "points",
        [.. ear.Ratings.SelectMany(rating => rating.Differences.Select(d => new IntervalRow(
            $"{rating.Attribute} {rating.Code}: {d.Person}, {d.Seat}", d.Points, $"{EarWords.Points(d.Points)} points", null, null, null)))])
    {
        Ends = ChartEnds.OfRatings,
    };

    private static IEnumerable<string> Scale =>
        [ReportingWords.RatingScale(string.Join("; ", RatingSteps.All.Select(step => step.Disturbance == step.Control ? $"{step.Points} {step.Control}" : $"{step.Points} {step.Disturbance} / {step.Control}")))];

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
                rows.AddRange(new (string Name, ClassComparison? Of)[] { ("steady", pair.Classes.Steady), ("impacts", pair.Classes.Impact) }
                    .Where(part => part.Of?.Overall is not null)
                    .Select(part => (IReadOnlyList<string>)
                    [
                        extra.Name, $"{names.Of(pair.Code)} minus {names.Of(pair.Reference)}", part.Name,
                        Figures.Difference(part.Of!.Overall), Figures.Interval95(part.Of.Overall), $"{extra.Readings}",
                    ]));
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
