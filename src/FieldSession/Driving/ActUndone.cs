using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The last act is taken back. It and this fact both stay in the journal.</summary>
/// <param name="Line">Number of the journal line that is taken back.</param>
public sealed record ActUndone(int Line) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                study.Undoables.Count > 0 && study.Undoables[^1].Line == Line
                    ? null
                    : new Objection(DrivingWords.LineIsNotLastAct(Line), "type 'u'")
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        int at = study.Undoables.FindLastIndex(u => u.Line == Line);
        return at < 0
            ? study
            : study.Undoables[at].Before with
            {
                Undoables = study.Undoables.GetRange(0, at),
                Undone = new Undoable(mark.Number, DrivingWords.Undo, study),
            };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string words = before.Undoables.LastOrDefault(u => u.Line == Line)?.Words ?? $"line {Line}";
        string next = after.NextSegment is { } segment ? $"; next {segment.Number} {segment.Name}" : "";
        return new Echo($"taken back: {words}{next}");
    }
}

/// <summary>Reads <c>m</c> (missed), <c>u</c> (undo) and <c>seg 5</c>.</summary>
public static class MoveText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0)
        {
            return null;
        }

        if (Typed.Is(words[0], "seg"))
        {
            return words.Length == 2 && Typed.Count(words[1]) is { } number
                ? Parsed.As(new SegmentChosen(number))
                : Parsed.No(DrivingWords.SegmentIsChosenByNumber, "type 'seg 5'");
        }

        if (words.Length > 1)
        {
            return null;
        }

        if (Typed.Is(words[0], "m"))
        {
            return Parsed.As(new SegmentMissed());
        }

        return Typed.Is(words[0], "u") ? Undo(study) : null;
    }

    private static Parsed Undo(Study study) =>
        study.Undoables.Count > 0
            ? Parsed.As(new ActUndone(study.Undoables[^1].Line))
            : Parsed.No(DrivingWords.ThereIsNothingToTakeBack, "go on");
}

/// <summary>The next reading belongs to another segment than the one that was due: repairs an off-by-one.</summary>
/// <param name="Segment">Number of that segment.</param>
public sealed record SegmentChosen(int Segment) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileARunIsOn(study)
            ?? (
                Segment switch
                {
                    < 1 => NoSuch(study),
                    _ when Segment > study.Plan!.Route.Count => NoSuch(study),
                    _ when Segment == study.RunOn?.NextSegment => new Objection(
                        DrivingWords.SegmentIsNextAlready(Segment),
                        DrivingWords.TypeItsReading
                    ),
                    _ => null,
                }
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.RunOn is { } run
            ? study.WithLastRun(run with { NextSegment = Segment }).Undoably(study, mark, $"seg {Segment}")
            : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(DrivingWords.NextReadingIs(after.NextSegment));
    }

    private Objection NoSuch(Study study) => new(JournalWords.ThereIsNoSegment(Segment), JournalWords.RouteHasSegmentsTo(study));
}

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
