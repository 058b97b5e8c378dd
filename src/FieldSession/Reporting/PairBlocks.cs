using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>With three codes and more: every pair on the main measure, alone and allowing for all that are asked at once.</summary>
internal static class PairBlocks
{
    /// <summary>The table; nothing for two codes.</summary>
    public static IEnumerable<ReportBlock> Of(ReportDay day)
    {
        MainMeasure measure = day.Study.Asked?.MainMeasure ?? MainMeasure.Steady;
        IReadOnlyList<PairEstimate> all = day.Comparison.MainSegments is null ? day.Comparison.Pairs : day.Comparison.PairsOnMainSegments;
        PairEstimate[] pairs = [.. all.Where(pair => pair.Class == ComparisonTerms.MainClassOf(measure))];
        return pairs.Length == 0 ? [] :
        [
            new Subheading(ReportingWords.PairsOfMainMeasure),
            new Paragraph(ReportingWords.HowPairsRead),
            new ReportTable(
                ["Pair", "Difference, dB", "95 % interval, alone", "p alone", "p together", "Interval, together", "By"],
                [.. pairs.Select(pair => Row(pair, day, measure))]),
        ];
    }

    private static IReadOnlyList<string> Row(PairEstimate pair, ReportDay day, MainMeasure measure)
    {
        // a pair with the control is shown as candidate minus control
        CodeComparison? against = day.Comparison.Comparisons.Concat(day.Comparison.AskedPairs).FirstOrDefault(one => Is(one, pair.First, pair.Second) || Is(one, pair.Second, pair.First));
        ClassComparison? asked = against is null ? null : VerdictSection.Main(day.Comparison, against, measure);
        string name = $"{day.Names.Of(against?.Code ?? pair.First)} minus {day.Names.Of(against?.Reference ?? pair.Second)}";
        return asked is { Basis: { } basis, Overall: { } overall }
            ? [name, .. Alone(overall), Figures.Probability(basis.PDifference), Figures.IntervalOfWord(basis, overall, ofEquivalence: false), Name(basis.Rule)]
            : [name, .. Alone(asked?.Overall ?? pair.Overall), Figures.Probability(pair.PHolm), "", ReportingWords.HolmExplored];
    }

    private static bool Is(CodeComparison one, string code, string reference) => one.Code == code && one.Reference == reference;

    private static string[] Alone(Estimate overall) => [Figures.Difference(overall), Figures.Interval95(overall), Figures.Probability(overall.P)];

    private static string Name(FamilyRule rule) => rule switch
    {
        FamilyRule.Dunnett => "Dunnett",
        FamilyRule.Holm => "Holm",
        _ => "alone",
    };
}
