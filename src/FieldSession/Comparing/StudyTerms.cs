using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The terms that a study's plan fixed for its comparison.</summary>
public static class StudyTerms
{
    /// <summary>Reference, margins, and whether the order is driven to its end.</summary>
    public static ComparisonTerms Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ComparisonTerms terms = new() { Reference = study.ReferenceCode?.Digits, PlanComplete = study.OrderDriven };
        return study.Plan is { } plan ? terms with { MarginDb = plan.MarginDb, ImpactMarginDb = plan.ImpactMarginDb } : terms;
    }
}
