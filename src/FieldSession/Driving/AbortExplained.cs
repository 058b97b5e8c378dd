using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Why a run was aborted, said at the stop.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Cause">Why, in the crew's words.</param>
public sealed record AbortExplained(int Run, string Cause) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return StopGate.ObjectionIn(study)
            ?? (
                Run <= study.Runs.Count && study.Runs[Run - 1].Aborted is { } abort
                    ? abort.Cause == Cause
                        ? new Objection(DrivingWords.AbortCauseIsThatAlready(Run), DrivingWords.NothingToCorrect)
                        : null
                    : new Objection(DrivingWords.RunWasNotAborted(Run), DrivingWords.NoCauseIsAsked)
            );
    }

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Run = study.NumberOf(Run, study.Runs.Select(run => run.Started)) };
    }

    /// <inheritdoc/>
    public override bool IsAboutSomethingIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.HasRun(Run);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Run run = study.Runs[Run - 1];
        return run.Aborted is null
            ? study
            : (study with { Runs = study.Runs.SetItem(Run - 1, run with { Aborted = new Abort(Cause) }) }).Undoably(
                study,
                mark,
                $"end {Cause}"
            );
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(DrivingWords.RunWasAbortedBecause(Run, Cause));
}
