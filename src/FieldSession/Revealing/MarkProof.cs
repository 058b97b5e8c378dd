using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Compares the marks read on the tyres with the opened key. Letter case and outer blanks do not count.</summary>
public static class MarkProof
{
    private const int ReadersNeeded = 2;

    /// <summary>How they compare.</summary>
    /// <param name="key">The key's lines for the codes that were driven.</param>
    /// <param name="marks">What was read.</param>
    /// <param name="readers">Who read it.</param>
    public static MarkCheck Of(IEnumerable<CodedSpec> key, IReadOnlyCollection<MarkRead> marks, IEnumerable<string> readers)
    {
        ArgumentNullException.ThrowIfNull(key);
        CodedSpec[] lines = [.. key];
        return new MarkCheck(
            [
                .. lines
                    .Where(line => marks.Any(mark => mark.Code == line.Code && !CrewMember.SamePerson(mark.Spec, line.UnderTape)))
                    .Select(line => line.Code),
            ],
            [.. lines.Where(line => marks.All(mark => mark.Code != line.Code)).Select(line => line.Code)],
            AreTwo(readers)
        );
    }

    /// <summary>Whether names are those of at least two people.</summary>
    public static bool AreTwo(IEnumerable<string> readers) =>
        readers.Select(reader => reader.Trim().ToUpperInvariant()).Where(reader => reader.Length > 0).Distinct().Count() >= ReadersNeeded;
}

/// <summary>What two people read under the tape of the tyres that were driven as a code.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The mark found on the tyres: the spec's name, or the letters drawn for it.</param>
public sealed record MarkRead(SpecCode Code, string Spec);

/// <summary>One reading of the marks.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Marks">What was read.</param>
public sealed record MarkReading(DateTimeOffset At, ImmutableList<MarkRead> Marks);

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
    public override Objection? ObjectionIn(Study study) =>
        ObjectionNow(study)
        ?? (
            !MarkProof.AreTwo(Readers) ? new Objection(RevealingWords.MarksNeedTwoReaders, RevealingWords.NameTwoReaders)
            : study.DrivenCodes.Except(Marks.Select(mark => mark.Code)).ToArray() is { Length: > 0 } missing
                ? new Objection(RevealingWords.MarksNotRead(string.Join(", ", missing)), RevealingWords.ReadEveryMarkAgain)
            : null
        );

    /// <summary>What rules out reading the marks again now, whatever they are; null: nothing.</summary>
    public static Objection? ObjectionNow(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.ForWriting(study)
            ?? (study.Opening is null ? new Objection(RevealingWords.KeyIsNotOpenYet, RevealingWords.ReadMarksAtReveal) : null);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Opening is not { } opening
            ? study
            : study with
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
    public override Echo EchoIn(Study before, Study after) =>
        new(RevealingWords.MarksWereReadAgain(Differ.IsEmpty ? RevealingWords.MarksAgree : WithheldWords.MarksDiffer(Differ)));
}
