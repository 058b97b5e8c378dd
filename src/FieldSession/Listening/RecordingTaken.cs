using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>A recording of a run was listened to: what is kept of it. A later one of the same run takes its place; both stay in the journal.</summary>
/// <param name="Recording">What is kept.</param>
public sealed record RecordingTaken(RunRecording Recording) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ListeningGate.ObjectionIn(study) ?? (!study.HasRun(Recording.Run)
        ? new Objection(ListeningWords.NoSuchRun(Recording.Run), ListeningWords.GiveRunThatWasDriven)
        : null);

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return new RecordingTaken(Recording with { Run = study.NumberOf(Recording.Run, study.Runs.Select(run => run.Started)) });
    }

    /// <inheritdoc/>
    public override bool IsAboutSomethingIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.HasRun(Recording.Run);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        RunRecording? earlier = study.Recordings.Find(known => known.Run == Recording.Run);
        RunRecording taken = Recording with { Ordinal = earlier?.Ordinal ?? study.Recordings.Count + 1, Mark = mark };
        return study with
        {
            Recordings = earlier is null ? study.Recordings.Add(taken) : study.Recordings.Replace(earlier, taken),
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(ListeningWords.RecordingIsTaken(after.Recordings.Find(known => known.Run == Recording.Run) ?? Recording));
    }
}
