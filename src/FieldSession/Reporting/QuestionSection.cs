using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the day was to answer, as it stood before the first run.</summary>
public static class QuestionSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new ReportSection("The question", [new Paragraph("There was no plan.")]);
        }

        string frozen = study.Runs.Count > 0 ? $"frozen before run 1 at {study.Runs[0].Started.At:yyyy-MM-dd HH:mm} UTC" : "no run yet";
        return new ReportSection("The question",
        [
            new Paragraph(plan.Question.Length > 0 ? plan.Question : "No question was written down."),
            new Points(
            [
                $"Plan: {frozen}.",
                $"Main measure: {MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments)}. Everything else is explored.",
                $"Margins: {Figures.MarginDb(plan.MarginDb)} dB on steady segments, {Figures.MarginDb(plan.ImpactMarginDb)} dB on impacts.",
                $"Order planned: {string.Join(' ', plan.Order)} (R is the reference place, drawn by lot). Runs driven: {string.Join(' ', study.Runs.Select(r => r.Code))}.",
                $"Crew: {string.Join(", ", plan.Crew.Select(m => $"{m.Name} ({m.Seat})"))}. Custodian: {plan.Custodian ?? "not named"}.",
                $"Protocol: {plan.Protocol}.",
                $"Tyres: {(plan.TyreSize is { } size ? $"{size}, " : "size not written down, ")}one set per spec unless the notes say more; build week, tread and hardness stand under Checks where they were compared.",
                .. PlanDoubts.Of(plan).Select(doubt => $"Weak in the plan, and driven so: {doubt}."),
                .. study.Amendments.Select(Amended),
            ]),
        ]);
    }

    private static string Amended(Amendment amendment)
    {
        string when = $"{amendment.Mark.At:yyyy-MM-dd HH:mm} UTC";
        string kind = amendment.AfterRun == 0 ? $"Changed before run 1, {when}" : $"AMENDED after run {amendment.AfterRun} had been driven, {when}";
        return $"{kind}: {amendment.What} from {amendment.From} to {amendment.To}, because {amendment.Reason}.";
    }
}
