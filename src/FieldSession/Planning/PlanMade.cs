using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>The plan is written down: the first fact of a study.</summary>
/// <param name="Plan">The plan.</param>
public sealed record PlanMade(Plan Plan) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Stage is Stage.Empty or Stage.Planned
            ? null
            : new Objection(PlanningWords.PlanIsFrozenBySealing, PlanningWords.AmendPartOrStartNew);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Plan = Plan, Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(
        PlanningWords.PlanOfStudy(Plan.StudyName, Plan.SpecCount, Plan.Route.Count, string.Join(' ', Plan.Order)));
}
