using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

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
        return new LogCompared(Comparison with
        {
            Readings = [.. Comparison.Readings.Select(one => one with { Run = study.NumberOf(one.Run, study.Runs.Select(run => run.Started)) })],
        });
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with
        {
            LogComparisons = study.LogComparisons.RemoveAll(known => known.Sha256 == Comparison.Sha256).Add(Comparison with { Mark = mark }),
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
