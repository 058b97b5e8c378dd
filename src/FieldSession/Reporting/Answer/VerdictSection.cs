using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The verdict: a line for the meter, the ear and the worth, then one sentence built from them.</summary>
public static class VerdictSection
{
    /// <summary>The section: one verdict for every code against the reference.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<ReportBlock> blocks = [];
        if (day.Names.Key is { NamesAllowed: false } withheld)
        {
            blocks.Add(new Paragraph(VerdictReportWords.NamesAreWithheld(withheld)));
        }

        if (day.Comparison.Comparisons.Count == 0)
        {
            blocks.Add(new Paragraph(VerdictReportWords.FewerThanTwoCodes));
        }

        blocks.AddRange(day.Comparison.Comparisons.Concat(day.Comparison.AskedPairs).SelectMany(pair => One(pair, day)));
        blocks.AddRange(ChosenAfter(day));
        return new ReportSection(ReportPart.Verdict, VerdictReportWords.VerdictInFull, blocks);
    }

    private static IEnumerable<ReportBlock> One(CodeComparison pair, ReportDay day)
    {
        Plan plan = day.Study.Asked!;
        PairVerdict found = PairVerdict.Of(pair, plan, day.Comparison, day.Ear);
        (ClassComparison? main, ChoiceFinding? choice) = found;
        string shown = main?.CouldShow is { } could ? VerdictReportWords.DayWouldHaveShown(could) : "";
        yield return new Paragraph(
            $"{day.Names.Of(pair.Code)} against {day.Names.Of(pair.Reference)}, on "
                + $"{MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments)}:"
        );
        yield return new LabelledLines([
            new LabelledLine("Meter", "", $"{MeterWord.InWords(main, plan.MainMarginDb)}.{shown}"),
            .. RingWord.InReport(day, pair) is { } ring ? [ring] : Array.Empty<LabelledLine>(),
            new LabelledLine(
                "Ear",
                "",
                $"{(choice is null ? $"NOT TESTED ENOUGH: {VerdictReportWords.NoForcedChoicesPlanned}" : ChoiceWords.Sentence(choice))}."
            ),
            new LabelledLine(
                "Worth",
                "",
                WorthWord.Of(main, found.Meter, found.Ear, plan, PairVerdict.IsAgainstControl(pair, day.Names.Key))
            ),
        ]);
        yield return new Paragraph(CombinedSentence.Of(found.Meter, choice, main, RingWord.Answer(day.Ring, pair)));
    }

    private static IEnumerable<ReportBlock> ChosenAfter(ReportDay day) =>
        day.ChosenAfter is not { } chosen
            ? []
            :
            [
                new Subheading(ReportingWords.ChosenAfterHead),
                new Paragraph(ReportingWords.ChosenAfterExplained),
                new Points([.. chosen.Comparisons.Select(pair => ChosenAfter(pair, chosen, day))]),
            ];

    private static string ChosenAfter(CodeComparison pair, Comparison chosen, ReportDay day)
    {
        Plan plan = day.Study.Plan!;
        return ReportingWords.ChosenAfterLine(
            $"{day.Names.Of(pair.Code)} against {day.Names.Of(pair.Reference)}",
            MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments),
            Figures.MarginDb(plan.MainMarginDb),
            $"{MeterWord.InWords(Main(chosen, pair, plan.MainMeasure), plan.MainMarginDb)}."
        );
    }

    /// <summary>The comparison that the plan's main question is answered on, clean readings; null: nothing can be compared there.</summary>
    public static ClassComparison? Main(Comparison comparison, CodeComparison pair, MainMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(pair);
        ClassComparisons? classes = comparison
            .Asked.FirstOrDefault(one => one.Code == pair.Code && one.Reference == pair.Reference)
            ?.Classes;
        return classes is null ? null : Of(classes, measure);
    }

    /// <summary>The class of a main measure.</summary>
    public static ClassComparison? Of(ClassComparisons classes, MainMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(classes);
        return measure switch
        {
            MainMeasure.Impact => classes.Impact,
            MainMeasure.All => classes.All,
            _ => classes.Steady,
        };
    }
}

/// <summary>What meter and ear say of a code against another, by the plan's main question.</summary>
/// <param name="Main">The comparison that the question is answered on; null: nothing can be compared there.</param>
/// <param name="Choice">The forced choices that carry the ear's word; null: none were planned for the pair.</param>
internal sealed record PairVerdict(ClassComparison? Main, ChoiceFinding? Choice)
{
    /// <summary>The meter's word.</summary>
    public MeterVerdict Meter => MeterWord.Of(Main);

    /// <summary>The ear's word.</summary>
    public EarVerdict Ear => Choice?.Verdict ?? EarVerdict.NotTestedEnough;

    /// <summary>What is said of a pair.</summary>
    public static PairVerdict Of(CodeComparison pair, Plan plan, Comparison comparison, EarFindings ear) =>
        new(VerdictSection.Main(comparison, pair, plan.MainMeasure), ear.MainChoice(pair.Code, pair.Reference));

    /// <summary>Whether it is known that the difference of a pair is candidate minus control.</summary>
    public static bool IsAgainstControl(CodeComparison pair, OpenedKey? key) =>
        key is { NamesAllowed: true } && key.IsControl(new SpecCode(pair.Reference)) == true;
}

/// <summary>One sentence from the meter's word and the ear's, by fixed rules (own method, docs/report.md, "The verdict").</summary>
public static class CombinedSentence
{
    /// <summary>The sentence.</summary>
    /// <param name="meter">The meter's word.</param>
    /// <param name="choice">The set of forced choices that the ear's word rests on; null: none was planned for the pair.</param>
    /// <param name="main">The comparison that the meter's word rests on.</param>
    /// <param name="ring">What the recordings answer, behind a semicolon; null: there is none, and where to look is said.</param>
    public static string Of(MeterVerdict meter, ChoiceFinding? choice, ClassComparison? main, string? ring = null)
    {
        string direction =
            VerdictReportWords.MeterShowsIt(main?.Overall?.DifferenceDb > 0 ? "louder" : "quieter")
            + (meter == MeterVerdict.MeasuredButSmall ? VerdictReportWords.LessThanMargin : "");
        return (meter, choice?.Verdict) switch
        {
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, EarVerdict.HeardBlind) => VerdictReportWords.CrewHeardIt(
                direction,
                Test(choice!)
            ),
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, EarVerdict.NotHeard) => VerdictReportWords.CrewDidNotHearIt(
                direction,
                Test(choice!),
                Would(choice!)
            ),
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, _) => VerdictReportWords.HearingNotTestedEnough(direction),
            (MeterVerdict.NotResolved, EarVerdict.HeardBlind) => VerdictReportWords.HeardButNotResolved(Test(choice!), ring),
            (_, EarVerdict.HeardBlind) => VerdictReportWords.CharacterThatMeterMisses(Test(choice!), ring),
            (MeterVerdict.SameWithin, EarVerdict.NotHeard) => VerdictReportWords.NotToldApart(main, Test(choice!), Would(choice!)),
            (MeterVerdict.SameWithin, _) => VerdictReportWords.MeterCouldNotTellApart(main),
            _ => VerdictReportWords.ThisDayCannotSay,
        };
    }

    private static string Test(ChoiceFinding choice) => ChoiceWords.TestedOn(choice);

    private static string Would(ChoiceFinding choice) => ChoiceWords.WouldHaveFound(choice);
}
