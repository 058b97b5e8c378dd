using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>What rules out listening now: it is done at a stop, while the data are open.</summary>
public static class ListeningGate
{
    /// <summary>The objection; null: none.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.ForWriting(study)
            ?? study switch
            {
                { DataFrozen: true } => new Objection(ListeningWords.DataAreFrozen, JournalWords.AddNoteInstead),
                { RunOn: not null } => new Objection(ListeningWords.RunIsOn, ListeningWords.StopAndParkFirst),
                { Runs.Count: 0 } => new Objection(JournalWords.NothingHasBeenDriven, ListeningWords.DriveFirst),
                _ => null,
            };
    }
}

/// <summary>A meter's log was held against the typed readings. The same log again takes the place of what it said before.</summary>
/// <param name="Comparison">What it said.</param>
public sealed record LogCompared(LogComparison Comparison) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ListeningGate.ObjectionIn(study);

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return new LogCompared(
            Comparison with
            {
                Readings =
                [
                    .. Comparison.Readings.Select(one => one with { Run = study.NumberOf(one.Run, study.Runs.Select(run => run.Started)) }),
                ],
            }
        );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with
        {
            LogComparisons = study
                .LogComparisons.RemoveAll(known => known.Sha256 == Comparison.Sha256)
                .Add(Comparison with { Mark = mark }),
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(ListeningWords.LogIsCompared(Comparison, Comparison.DoubtsIn(after).Count()));
    }
}

/// <summary>
/// A recording of a run was listened to: what is kept of it. A later one of the same run takes its place; both stay in the journal.
/// </summary>
/// <param name="Recording">What is kept.</param>
public sealed record RecordingTaken(RunRecording Recording) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        ListeningGate.ObjectionIn(study)
        ?? (
            !study.HasRun(Recording.Run)
                ? new Objection(ListeningWords.NoSuchRun(Recording.Run), ListeningWords.GiveRunThatWasDriven)
                : null
        );

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
