using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The terms that a study's plan fixed for its comparison.</summary>
public static class StudyTerms
{
    /// <summary>
    /// Reference, margins, main segments, whether the order is driven to its end, and which verdict this is: every time the order was
    /// lengthened after it had been driven to its end, the crew had seen a verdict before.
    /// </summary>
    public static ComparisonTerms Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ComparisonTerms terms = new()
        {
            Reference = study.ReferenceCode?.Digits,
            Archive = study.Archive is { } archive ? LinesOf(archive.Lines) : null,
            PlanComplete = study.OrderDriven && !study.Unsettled.Any(),
            VerdictNumber = 1 + study.Amendments.Count(amendment => amendment is { What: "order", OrderWasDriven: true }),
        };
        return study.Plan is { } plan ? terms with { MarginDb = plan.MarginDb, ImpactMarginDb = plan.ImpactMarginDb, MainSegments = plan.MainSegments, MainMeasure = plan.MainMeasure } : terms;
    }

    /// <summary>What earlier days lend, as the comparison takes it.</summary>
    public static IReadOnlyList<ArchiveLine> LinesOf(IEnumerable<EarlierScatter> earlier)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        return [.. earlier.Select(LineOf)];
    }

    private static ArchiveLine LineOf(EarlierScatter earlier) => new(
        earlier.Day,
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
        earlier.SEDb);
}
