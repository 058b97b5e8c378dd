using System.Collections.Immutable;
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
    public override Echo EchoIn(Study before, Study after) =>
        new(PlanningWords.PlanOfStudy(Plan.StudyName, Plan.SpecCount, Plan.Route.Count, string.Join(' ', Plan.Order)));
}

/// <summary>
/// The plan asks for the repeatability of the crew's earlier days. It is written down before run 1, figures and all, so that neither
/// the result nor an archive that grows meanwhile can decide what is lent.
/// </summary>
/// <param name="From">The archive's folder, as it was named.</param>
/// <param name="Lines">The repeatability of its days.</param>
public sealed record ArchiveTaken(string From, ImmutableList<EarlierScatter> Lines) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                study.Runs.Count > 0 ? new Objection(PlanningWords.FirstRunHasBegun, PlanningWords.GoOnWithoutArchive)
                : Lines.Count == 0 ? new Objection(PlanningWords.ArchiveHasNoSuchStudy, PlanningWords.DriveFirstDayWithoutArchive)
                : null
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Archive = new TakenArchive(From, Lines, mark), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        int days = EarlierScatter.DaysIn(Lines);
        double nu = Lines.Where(line => line.Group == "steady").Sum(line => line.NuRun);
        return new Echo(PlanningWords.RepeatabilityTakenFromArchive(days, From, nu));
    }
}
