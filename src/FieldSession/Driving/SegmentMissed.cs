using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Nothing was read on the segment; the run moves on.</summary>
public sealed record SegmentMissed : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.RunOn is { } run && study.NextSegment is { } segment
            ? Passing.Of(study, run, new Missed(segment.Number, mark)).Undoably(study, mark, "missed")
            : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        string where = before.NextSegment is { } segment ? $" {segment.Number} {segment.Name}" : "";
        return new Echo($"missed{where}{Passing.WhatIsNext(after)}");
    }
}
