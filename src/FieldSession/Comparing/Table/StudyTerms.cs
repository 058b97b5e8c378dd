using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The terms that a study's plan fixed for its comparison.</summary>
public static class StudyTerms
{
    /// <summary>
    /// Reference, margins, main segments, whether the order is driven to its end, and how often it was lengthened after a comparison could
    /// be seen. What was amended of the question after that is left out of account here (<see cref="ChosenAfter"/>).
    /// </summary>
    public static ComparisonTerms Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ComparisonTerms terms = new()
        {
            Reference = study.ReferenceCode?.Digits,
            Archive = study.Archive is { } archive ? LinesOf(archive.Lines) : null,
            PlanComplete = study.OrderDriven && !study.Unsettled.Any(),
        };
        return study.Asked is { } plan
            ? Asking(terms with { Looks = new Looks(OrderRunsOf(study)), AsksAllPairs = plan.AllPairs == true }, plan)
            : terms;
    }

    /// <summary>
    /// The terms of a question that was chosen after a comparison could be seen, to be shown beside the headline; null: none was.
    /// </summary>
    public static ComparisonTerms? ChosenAfter(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study is { Plan: { } plan, Asked: { } asked } && plan != asked ? Asking(Of(study), plan) : null;
    }

    private static ComparisonTerms Asking(ComparisonTerms terms, Plan plan) =>
        terms with
        {
            MarginDb = plan.MarginDb,
            ImpactMarginDb = plan.ImpactMarginDb,
            MainSegments = plan.MainSegments,
            MainMeasure = plan.MainMeasure,
        };

    /// <summary>Runs of the order as it was planned, then after each time it was lengthened when a comparison could be seen.</summary>
    public static IReadOnlyList<int> OrderRunsOf(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        // an amendment of the order tells what it was before
        return
        [
            .. study
                .Amendments.Where(amendment => amendment is { What: "order", ResultsWereSeen: true })
                .Select(amendment => amendment.From.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length),
            study.Plan?.Order.Count ?? 0,
        ];
    }

    /// <summary>What earlier days lend, as the comparison takes it.</summary>
    public static IReadOnlyList<ArchiveLine> LinesOf(IEnumerable<EarlierScatter> earlier)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        return [.. earlier.Where(line => line.Group != EarlierScatter.Ring).Select(LineOf)];
    }

    /// <summary>What earlier days lend to the ring; its segments are steady ones.</summary>
    public static IReadOnlyList<ArchiveLine> RingLinesOf(IEnumerable<EarlierScatter> earlier)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        return
        [
            .. earlier.Where(line => line.Group == EarlierScatter.Ring).Select(line => LineOf(line) with { Class = MeasureClass.Steady }),
        ];
    }

    private static ArchiveLine LineOf(EarlierScatter earlier) =>
        new(
            earlier.Study ?? earlier.Day,
            earlier.Group switch
            {
                "steady" => MeasureClass.Steady,
                "impact" => MeasureClass.Impact,
                _ => null,
            },
            earlier.NuRun,
            earlier.SRunDb,
            earlier.Kbar,
            earlier.NuE,
            earlier.SEDb
        );
}
