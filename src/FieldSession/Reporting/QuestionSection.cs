using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the day was to answer, as it was before the first run.</summary>
public static class QuestionSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new ReportSection(ReportPart.Question, "The question", [new Paragraph(ReportingWords.ThereWasNoPlan)]);
        }

        string frozen = study.Runs.Count > 0 ? ReportingWords.FrozenBeforeFirstRun(study) : ReportingWords.NoRunYet;
        return new ReportSection(ReportPart.Question, "The question",
        [
            new Paragraph(plan.Question.Length > 0 ? plan.Question : ReportingWords.NoQuestionWasWrittenDown),
            new Points(
            [
                $"Plan: {frozen}.",
                ReportingWords.MainMeasureOfPlan(plan),
                ReportingWords.MarginsOfPlan(plan),
                ReportingWords.OrderPlannedAndDriven(plan, string.Join(' ', study.Runs.Select(r => r.Code))),
                $"Crew: {string.Join(", ", plan.Crew.Select(m => $"{m.Name} ({m.Seat})"))}. Custodian: {plan.Custodian ?? "not named"}.",
                $"Protocol: {plan.Protocol}.",
                ReportingWords.TyresOfPlan(plan.TyreSize is { } size ? $"{size}, " : ReportingWords.SizeNotWrittenDown),
                .. PlanDoubts.Of(plan).Select(doubt => ReportingWords.WeakInPlan(doubt)),
                .. study.Amendments.Select(Amended),
            ]),
        ]);
    }

    private static string Amended(Amendment amendment)
    {
        string when = $"{amendment.Mark.At:yyyy-MM-dd} {amendment.Mark.At:t} UTC";
        string kind = amendment.AfterRun == 0 ? ReportingWords.ChangedBeforeFirstRun(when) : ReportingWords.AmendedAfterRun(amendment, when);
        return ReportingWords.AmendmentWithReason(kind, amendment);
    }
}
