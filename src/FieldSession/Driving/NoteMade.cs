using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Someone said or saw something; it belongs to the last segment read, where there is one.</summary>
/// <param name="Words">The note.</param>
/// <param name="Who">Who said it; null: not noted.</param>
public sealed record NoteMade(string Words, string? Who = null) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.ForWriting(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool afterReveal = study.Opening is not null;
        Run? run = study.DataFrozen ? null : study.LastRun;
        int? segment = run is { Passages.Count: > 0 } ? run.Passages[^1].Segment : null;
        Note note = new(Words, run?.Number, segment, mark) { Who = Who, AfterReveal = afterReveal };
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
