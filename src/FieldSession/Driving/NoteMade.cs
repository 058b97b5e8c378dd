using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Someone said or saw something; it belongs to the segment named, else to the last one read, where there is one.</summary>
/// <param name="Words">The note.</param>
/// <param name="Who">Who said it; null: not noted.</param>
/// <param name="Run">Number of the run it belongs to; null: the last one.</param>
/// <param name="Segment">Number of the segment in that run; null: the last one read.</param>
public sealed record NoteMade(string Words, string? Who = null, int? Run = null, int? Segment = null) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.ForWriting(study) ?? (Run is { } run && Segment is { } segment
        ? StopGate.ObjectionToPlace(study, run, segment)
        : null);

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Run is { } run ? this with { Run = study.NumberOf(run, study.Runs.Select(driven => driven.Started)) } : this;
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool afterReveal = study.Opening is not null;
        Run? last = study.DataFrozen ? null : study.LastRun;
        int? segment = last is { Passages.Count: > 0 } ? last.Passages[^1].Segment : null;
        Note note = new(Words, Run ?? last?.Number, Run is null ? segment : Segment, mark) { Who = Who, AfterReveal = afterReveal };
        Study noted = study with { Notes = study.Notes.Add(note) };
        return study.DataFrozen ? noted : noted.Undoably(study, mark, "note");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        Note note = after.Notes[^1];
        string where = note.Segment is { } segment && after.Plan is { } plan
            ? $" on {segment} {plan.Route[segment - 1].Name}"
            : "";
        return new Echo($"note{where}: {Words}");
    }
}
