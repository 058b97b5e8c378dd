using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>
/// The ring is uncovered before the last prediction is locked; predictions locked from now on were made after it was seen.
/// </summary>
/// <param name="Why">The reason.</param>
public sealed record RingOpened(string Why) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        ListeningGate.ObjectionIn(study)
        ?? (
            study switch
            {
                { RingOpening: not null } => new Objection(ListeningWords.RingIsOpenAlready, "go on"),
                { Recordings.Count: 0 } => new Objection(ListeningWords.NoRecordingYet, ListeningWords.ListenFirst),
                _ => null,
            }
        );

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { RingOpening = new RingOpening(Why, mark), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(ListeningWords.RingIsUncovered(Why));
}

/// <summary>Three knocks for the recorder, and this line at the third: one moment on both clocks.</summary>
public sealed record MarkGiven : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return (study with { ClockMarks = study.ClockMarks.Add(mark) }).Undoably(study, mark, "mark");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(ListeningWords.MarkIsGiven(after.ClockMarks.Count));
    }
}

/// <summary>Reads <c>mark</c>, <c>chain recorder at=headrest gain=3</c> and <c>ring open because WHY</c>.</summary>
public static class ListeningText
{
    /// <summary>Longest name of a chain.</summary>
    public const int LongestName = 40;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        return words.FirstOrDefault("").ToLowerInvariant() switch
        {
            "mark" => words.Length == 1 ? Parsed.As(new MarkGiven()) : Parsed.No(ListeningWords.MarkIsAlone, "mark"),
            "chain" => Chain(words),
            "ring" => Ring(words),
            _ => null,
        };
    }

    private static Parsed Chain(string[] words) =>
        words is [_, var name, _, ..] && IsName(name)
            ? Parsed.As(new ChainNamed(name, string.Join(' ', words.Skip(2))))
            : Parsed.No(ListeningWords.ChainNeedsNameAndWords, ListeningWords.ChainForm);

    private static Parsed Ring(string[] words) =>
        words is [_, var open, var because, _, ..] && Typed.Is(open, "open") && Typed.Is(because, "because")
            ? Parsed.As(new RingOpened(string.Join(' ', words.Skip(3))))
            : Parsed.No(ListeningWords.RingNeedsReason, ListeningWords.RingForm);

    /// <summary>Whether a word can name a chain.</summary>
    public static bool IsName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length is > 0 and <= LongestName && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
    }
}
