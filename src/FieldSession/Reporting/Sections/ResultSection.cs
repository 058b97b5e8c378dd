using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The differences by class, from the clean readings and from all readings side by side.</summary>
public static class ResultSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<ReportBlock> blocks = [new Paragraph(ReportingWords.HowDifferencesRead)];
        foreach (CodeComparison pair in day.Comparison.Comparisons)
        {
            blocks.Add(new Subheading($"{day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)}"));
            blocks.Add(Chart(pair, day));
            blocks.Add(
                new ReportTable(
                    [
                        "Segments",
                        "Readings",
                        "Difference, dB",
                        "95 % interval",
                        "90 % interval",
                        ReportingWords.CouldHaveShownInDb,
                        "Verdict",
                    ],
                    [.. MainRows(pair, day), .. Rows(pair)]
                )
            );
            blocks.Add(new Points([.. Remarks(pair)]));
            blocks.AddRange(HangsOn(VerdictSection.Main(day.Comparison, pair, day.Study.Asked?.MainMeasure ?? MainMeasure.Steady)));
        }

        blocks.AddRange(PairBlocks.Of(day));
        return new ReportSection(ReportPart.Result, "Result", blocks);
    }

    private static IEnumerable<ReportBlock> HangsOn(ClassComparison? main) =>
        main?.Sensitivity is not { Lines.Count: > 0 } sensitivity
            ? []
            :
            [
                new Paragraph(ReportingWords.WhatMainMeasureHangsOn),
                new ReportTable(
                    [ReportingWords.OneThingChanged, "Difference, dB", "Verdict"],
                    [
                        .. HangsOnWords
                            .Table(sensitivity, main.Verdict)
                            .Select(row => (IReadOnlyList<string>)[row.Change, row.Difference, row.Verdict]),
                    ]
                ),
            ];

    // named in the plan: these come first, everything else is explored
    private static IEnumerable<IReadOnlyList<string>> MainRows(CodeComparison pair, ReportDay day)
    {
        CodeComparison? main = day.Comparison.OnMainSegments.FirstOrDefault(one => one.Code == pair.Code);
        MainMeasure measure = day.Study.Asked?.MainMeasure ?? MainMeasure.Steady;
        ClassComparison? clean = main is null ? null : VerdictSection.Of(main.Classes, measure);
        ClassComparison? all = main is null ? null : VerdictSection.Of(main.WithSpoilt, measure);
        return new[] { ("clean", clean), ("all", all) }
            .Where(row => row.Item2 is not null)
            .Select(row => Row("main segments", row.Item1, row.Item2!));
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(CodeComparison pair)
    {
        foreach ((string name, Func<ClassComparisons, ClassComparison?> part) in Parts)
        {
            if (part(pair.Classes) is { } clean)
            {
                yield return Row(name, "clean", clean);
            }

            if (part(pair.WithSpoilt) is { } all)
            {
                yield return Row(name, "all", all);
            }
        }
    }

    private static (string Name, Func<ClassComparisons, ClassComparison?> Part)[] Parts =>
        [("steady", classes => classes.Steady), ("impacts", classes => classes.Impact), ("all together", classes => classes.All)];

    private static IntervalChart Chart(CodeComparison pair, ReportDay day)
    {
        ClassComparison? main = VerdictSection.Main(day.Comparison, pair, day.Study.Asked?.MainMeasure ?? MainMeasure.Steady);
        double MarginDb(ClassComparison one) => one.Class == MeasureClass.Impact ? day.Comparison.ImpactMarginDb : day.Comparison.MarginDb;
        IEnumerable<IntervalRow> Line(string label, ClassComparison? one) =>
            one is null ? [] : DifferenceRow.Of(label, one.Overall, MarginDb(one), ReferenceEquals(one, main));
        return new IntervalChart(
            ReportingWords.DifferenceWithIntervals(day, pair),
            "dB",
            [
                .. day.Comparison.MainSegments is null ? [] : Line(ReportingWords.MainSegmentsClean, main),
                .. Parts.SelectMany(part =>
                    (IEnumerable<IntervalRow>)
                        [
                            .. Line($"{part.Name}, clean", part.Part(pair.Classes)),
                            .. Line(
                                $"{part.Name}, all",
                                ReferenceEquals(pair.Classes, pair.WithSpoilt) ? null : part.Part(pair.WithSpoilt)
                            ),
                        ]
                ),
            ]
        )
        {
            Ends = ChartEnds.OfLevels,
            MarkedMeans = ReportingWords.TheMainMeasure,
        };
    }

    private static IReadOnlyList<string> Row(string name, string readings, ClassComparison one) =>
        [
            name,
            readings,
            Figures.Difference(one.Overall),
            Figures.Interval95(one.Overall),
            Figures.Interval90(one.Overall),
            Figures.CouldShow(one.CouldShow),
            one.IsExplored ? "explored" : one.Verdict,
        ];

    private static IEnumerable<string> Remarks(CodeComparison pair) =>
        Parts.SelectMany(part => part.Part(pair.Classes)?.Remarks.Select(remark => $"{part.Name}: {remark}") ?? []).Distinct();
}

/// <summary>With three codes and more: every pair on the main measure, alone and allowing for all that are asked at once.</summary>
internal static class PairBlocks
{
    /// <summary>The table; nothing for two codes.</summary>
    public static IEnumerable<ReportBlock> Of(ReportDay day)
    {
        MainMeasure measure = day.Study.Asked?.MainMeasure ?? MainMeasure.Steady;
        IReadOnlyList<PairEstimate> all = day.Comparison.MainSegments is null ? day.Comparison.Pairs : day.Comparison.PairsOnMainSegments;
        PairEstimate[] pairs = [.. all.Where(pair => pair.Class == ComparisonTerms.MainClassOf(measure))];
        return pairs.Length == 0
            ? []
            :
            [
                new Subheading(ReportingWords.PairsOfMainMeasure),
                new Paragraph(ReportingWords.HowPairsRead),
                new ReportTable(
                    ["Pair", "Difference, dB", "95 % interval, alone", "p alone", "p together", "Interval, together", "By"],
                    [.. pairs.Select(pair => Row(pair, day, measure))]
                ),
            ];
    }

    private static IReadOnlyList<string> Row(PairEstimate pair, ReportDay day, MainMeasure measure)
    {
        // a pair with the control is shown as candidate minus control
        CodeComparison? against = day
            .Comparison.Comparisons.Concat(day.Comparison.AskedPairs)
            .FirstOrDefault(one => Is(one, pair.First, pair.Second) || Is(one, pair.Second, pair.First));
        ClassComparison? asked = against is null ? null : VerdictSection.Main(day.Comparison, against, measure);
        string name = $"{day.Names.Of(against?.Code ?? pair.First)} minus {day.Names.Of(against?.Reference ?? pair.Second)}";
        return asked is { Basis: { } basis, Overall: { } overall }
            ?
            [
                name,
                .. Alone(overall),
                Figures.Probability(basis.PDifference),
                Figures.IntervalOfWord(basis, overall, ofEquivalence: false),
                Name(basis.Rule),
            ]
            : [name, .. Alone(asked?.Overall ?? pair.Overall), Figures.Probability(pair.PHolm), "", ReportingWords.HolmExplored];
    }

    private static bool Is(CodeComparison one, string code, string reference) => one.Code == code && one.Reference == reference;

    private static string[] Alone(Estimate overall) =>
        [Figures.Difference(overall), Figures.Interval95(overall), Figures.Probability(overall.P)];

    private static string Name(FamilyRule rule) =>
        rule switch
        {
            FamilyRule.Dunnett => "Dunnett",
            FamilyRule.Holm => "Holm",
            _ => "alone",
        };
}
