using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// After the reveal two people read the marks of all driven codes again, because a reading did not agree. Every earlier reading stays
/// and is shown beside this one; this one decides whether names may be in the headline.
/// </summary>
/// <param name="Marks">What was read, for every driven code.</param>
/// <param name="Readers">The two people who read it.</param>
/// <param name="Differ">The codes whose mark is still not the one in the key.</param>
public sealed record MarksReadAgain(ImmutableList<MarkRead> Marks, ImmutableList<string> Readers, ImmutableList<SpecCode> Differ) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ObjectionNow(study) ?? (
        !MarkProof.AreTwo(Readers) ? new Objection(RevealingWords.MarksNeedTwoReaders, RevealingWords.NameTwoReaders)
        : study.DrivenCodes.Except(Marks.Select(mark => mark.Code)).ToArray() is { Length: > 0 } missing
            ? new Objection(RevealingWords.MarksNotRead(string.Join(", ", missing)), RevealingWords.ReadEveryMarkAgain)
        : null);

    /// <summary>What rules out reading the marks again now, whatever they are; null: nothing.</summary>
    public static Objection? ObjectionNow(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.ForWriting(study) ?? (study.Opening is null ? new Objection(RevealingWords.KeyIsNotOpenYet, RevealingWords.ReadMarksAtReveal) : null);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Opening is not { } opening ? study : study with
        {
            Opening = opening with
            {
                Marks = new MarkCheck(Differ, [], MarkProof.AreTwo(Readers)),
                Readers = Readers,
                ReadAgain = opening.ReadAgain.Add(mark),
            },
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(RevealingWords.MarksWereReadAgain(
        Differ.IsEmpty ? RevealingWords.MarksAgree : WithheldWords.MarksDiffer(Differ)));
}
