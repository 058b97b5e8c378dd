using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// Who is who, read a second time from the journal after the reveal. The study never holds it; only the reveal and the
/// report take it.
/// </summary>
/// <param name="Key">Which spec each code meant.</param>
/// <param name="Control">The control spec; null: not told.</param>
/// <param name="Marks">What was read on the tyres, last.</param>
/// <param name="Check">How that compares with the key.</param>
/// <param name="CommitmentHolds">Whether the key gave the published commitment; null: there was none.</param>
public sealed record OpenedKey(
    ImmutableList<CodedSpec> Key,
    string? Control,
    ImmutableList<MarkRead> Marks,
    MarkCheck Check,
    bool? CommitmentHolds
)
{
    /// <summary>Readings of the marks that were made before the last one, oldest first.</summary>
    public ImmutableList<ImmutableList<MarkRead>> EarlierMarks { get; init; } = [];

    /// <summary>The key's lines for the codes that were driven.</summary>
    public ImmutableList<CodedSpec> DrivenKey { get; init; } = Key;

    /// <summary>Whether commitment and marks let the names into the headline.</summary>
    public bool NamesAllowed => Check.Holds && CommitmentHolds != false;

    /// <summary>Which checks failed, in words; empty: none.</summary>
    public IEnumerable<string> WhyWithheld => WithheldWords.Of(Check, CommitmentHolds);

    /// <summary>The key that the entries of a journal hold; null: it is not open.</summary>
    public static OpenedKey? In(IEnumerable<Entry> entries)
    {
        OpenedKey? key = null;
        foreach (Entry entry in entries)
        {
            key = entry switch
            {
                KeyOpened opened => Of(opened),
                MarksReadAgain again when key is not null => key.After(again),
                _ => key,
            };
        }

        return key;
    }

    /// <summary>The fact that the marks were read again.</summary>
    /// <param name="marks">What was read, for every driven code.</param>
    /// <param name="readers">Who read it.</param>
    public MarksReadAgain ReadAgain(IReadOnlyCollection<MarkRead> marks, IEnumerable<string> readers) =>
        new([.. marks], [.. readers], MarkProof.Of(DrivenKey, marks, []).Differ);

    /// <summary>The spec behind a code; null: the key does not name the code.</summary>
    public string? SpecOf(SpecCode code) => Key.FirstOrDefault(k => k.Code == code)?.Spec;

    /// <summary>The first code of the control spec; null: not told.</summary>
    public SpecCode? ControlCode => Control is { } control ? Key.FirstOrDefault(k => CrewMember.SamePerson(k.Spec, control))?.Code : null;

    /// <summary>Whether a code meant the control spec; null: the control was not told, or the key does not name the code.</summary>
    public bool? IsControl(SpecCode code) =>
        Control is { } control && SpecOf(code) is { } spec ? CrewMember.SamePerson(spec, control) : null;

    /// <summary>Every code that meant the same spec, fitting by fitting; the code alone where the key does not name it.</summary>
    public IReadOnlyList<SpecCode> CodesLike(SpecCode code) =>
        SpecOf(code) is { } spec ? [.. Key.Where(k => CrewMember.SamePerson(k.Spec, spec)).Select(k => k.Code)] : [code];

    /// <summary>What was read on the tyres of a code, last; empty: nothing.</summary>
    public string MarkOf(SpecCode code) => string.Join(" / ", Marks.Where(mark => mark.Code == code).Select(mark => mark.Spec).Distinct());

    /// <summary>What was read on the tyres of a code before that and was not the same, oldest first; empty: nothing.</summary>
    public string EarlierMarkOf(SpecCode code) =>
        string.Join(
            " / ",
            EarlierMarks
                .SelectMany(reading => reading.Where(mark => mark.Code == code).Select(mark => mark.Spec))
                .Where(mark => !CrewMember.SamePerson(mark, MarkOf(code)))
                .Distinct()
        );

    private static OpenedKey Of(KeyOpened opened) =>
        new(opened.Key, opened.Control, opened.Marks, opened.Check, opened.CommitmentHolds)
        {
            DrivenKey = [.. opened.DrivenKey],
            EarlierMarks = [.. opened.EarlierMarks?.Select(reading => reading.Marks) ?? []],
        };

    private OpenedKey After(MarksReadAgain again) =>
        this with
        {
            Marks = again.Marks,
            Check = MarkProof.Of(DrivenKey, again.Marks, again.Readers),
            EarlierMarks = EarlierMarks.Add(Marks),
        };

    /// <summary>Notes written before the reveal that hold the name of a spec: the sign of a leak that only a person can judge.</summary>
    public IEnumerable<Note> NotesThatName(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Notes.Where(note =>
            !note.AfterReveal && Key.Any(k => note.Words.Contains(k.Spec, StringComparison.OrdinalIgnoreCase))
        );
    }
}

/// <summary>Which spec a code meant.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The custodian's name of the spec.</param>
/// <param name="Mark">The mark drawn for its tyres; null: the name is the mark.</param>
public sealed record CodedSpec(SpecCode Code, string Spec, string? Mark = null)
{
    /// <summary>What has to be read under the tape.</summary>
    public string UnderTape => Mark ?? Spec;
}
