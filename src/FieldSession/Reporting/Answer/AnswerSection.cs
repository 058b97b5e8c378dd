using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>
/// The answer card, read first: for every code against the reference one plain sentence, the words with their numbers, what the day could
/// have shown and what the verdict hangs on; then every difference on its margin. Made by rules from the findings, never stronger than the
/// verdict.
/// </summary>
public static class AnswerSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<ReportBlock> blocks = [new Paragraph(AnswerWords.About(day.Study))];
        if (day.Names.Key is { NamesAllowed: false } withheld)
        {
            blocks.Add(new Paragraph(VerdictReportWords.NamesAreWithheld(withheld)));
        }

        CodeComparison[] all = [.. day.Comparison.Comparisons, .. day.Comparison.AskedPairs];
        CodeComparison[] pairs = [.. all.Where(pair => IsOfOneFitting(pair, day))];
        if (pairs.Length < all.Length)
        {
            blocks.Add(new Paragraph(AnswerWords.CodesOfOtherFittings([.. all.Except(pairs).Select(pair => pair.Code)])));
        }

        if (all.Length == 0)
        {
            blocks.Add(new Headline(VerdictReportWords.FewerThanTwoCodes));
        }

        Answered[] answers = [.. pairs.Select(pair => Answer(pair, day))];
        blocks.AddRange(
            answers.Select(
                (answer, place) =>
                    new Headline(
                        EarToldOnce(answers) && place < answers.Length - 1 ? answer.OfMeter : $"{answer.OfMeter} {answer.OfEar}".TrimEnd()
                    )
            )
        );
        blocks.Add(new LabelledLines([.. Lines(answers)]));
        if (pairs.Length > 0)
        {
            blocks.Add(Chart(pairs, day));
        }

        return new ReportSection(ReportPart.Answer, AnswerWords.Title, blocks);
    }

    // until the key names them nobody knows which codes of two fittings are one spec, so their difference is no answer about a spec
    private static bool IsOfOneFitting(CodeComparison pair, ReportDay day) =>
        day.Names.Key is { NamesAllowed: true }
        || day.Study.Fittings.Count < 2
        || day.Study.Fittings.Any(fitting => new[] { pair.Code, pair.Reference }.All(code => fitting.Codes.Contains(new SpecCode(code))));

    private static Answered Answer(CodeComparison pair, ReportDay day)
    {
        Plan plan = day.Study.Asked!;
        PairVerdict found = PairVerdict.Of(pair, plan, day.Comparison, day.Ear);
        ClassComparison? main = found.Main;
        WorthVerdict worth = WorthWord
            .Verdict(main, found.Meter, found.Ear, plan, PairVerdict.IsAgainstControl(pair, day.Names.Key))
            .Verdict;
        AskedPair asked = new(day.Names.Plainly(pair.Code), day.Names.Plainly(pair.Reference), plan, main, found.Choice);
        return new Answered(
            asked.Asked,
            PlainSentence.OfMeter(asked, AnswerWords.When(day.Study)),
            PlainSentence.OfEar(asked),
            [
                AnswerWords.Meter(MeterWord.Word(found.Meter, plan.MainMarginDb), main),
                .. RingWord.Line(day.Study, day.Ring, pair) is { } ring ? [AnswerWords.Ring(ring)] : Array.Empty<LabelledLine>(),
                AnswerWords.Ear(ChoiceWords.Word(found.Ear), found.Choice, day.Names.Plainly),
                AnswerWords.Worth(WorthWord.Word(worth), WorthWord.Price(plan)),
                .. main?.CouldShow is { } could ? [AnswerWords.CouldHaveShown(could)] : Array.Empty<LabelledLine>(),
                .. HangsOnWords.Sentence(main?.Sensitivity) is { } sentence ? [AnswerWords.HangsOn(sentence)] : Array.Empty<LabelledLine>(),
            ]
        );
    }

    private static bool EarToldOnce(Answered[] answers) => answers.Select(answer => answer.OfEar).Distinct().Count() == 1;

    // what holds for every candidate is said once
    private static IEnumerable<LabelledLine> Lines(Answered[] answers) =>
        from line in answers.SelectMany(answer => answer.Lines.Select(line => (answer.Asked, Line: line)))
        group line by line.Line.Label into same
        let differs = same.Select(one => one.Line).Distinct().Count() > 1 || same.Count() < answers.Length
        from one in differs ? same : same.Take(1)
        select differs && answers.Length > 1 ? one.Line with { Label = AnswerWords.LabelOf(one.Line.Label, one.Asked) } : one.Line;

    /// <summary>The answer for one code against the reference.</summary>
    private sealed record Answered(string Asked, string OfMeter, string OfEar, IReadOnlyList<LabelledLine> Lines);

    private static IntervalChart Chart(CodeComparison[] pairs, ReportDay day)
    {
        Plan plan = day.Study.Asked!;
        return new IntervalChart(
            AnswerWords.ChartTitle(day.Names.Plainly(pairs[0].Reference), MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments)),
            "dB",
            [
                .. pairs.SelectMany(pair =>
                    DifferenceRow.Of(
                        pair.Reference == pairs[0].Reference
                            ? day.Names.Plainly(pair.Code)
                            : AnswerWords.Pair(day.Names.Plainly(pair.Code), day.Names.Plainly(pair.Reference)),
                        VerdictSection.Main(day.Comparison, pair, plan.MainMeasure)?.Overall,
                        plan.MainMarginDb,
                        marked: true
                    )
                ),
            ]
        )
        {
            Ends = ChartEnds.OfLevels,
        };
    }
}
