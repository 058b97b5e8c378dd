using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// Who is who, read a second time from the journal after the reveal. The study never holds it; only the reveal and the
/// report take it.
/// </summary>
/// <param name="Key">Which spec each code stood for.</param>
/// <param name="Control">The control spec; null: not told.</param>
/// <param name="Marks">What was read on the tyres.</param>
/// <param name="NamesAllowed">Whether commitment and marks let the names into the headline.</param>
public sealed record OpenedKey(ImmutableList<CodedSpec> Key, string? Control, ImmutableList<MarkRead> Marks, bool NamesAllowed)
{
    /// <summary>The key that the entries of a journal hold; null: it is not open.</summary>
    public static OpenedKey? In(IEnumerable<Entry> entries) => entries.OfType<KeyOpened>().LastOrDefault() is { } opened
        ? new OpenedKey(opened.Key, opened.Control, opened.Marks, opened.MarksAgree && opened.CommitmentHolds != false)
        : null;

    /// <summary>The spec behind a code; null: the key does not name the code.</summary>
    public string? SpecOf(SpecCode code) => Key.FirstOrDefault(k => k.Code == code)?.Spec;

    /// <summary>The first code of the control spec; null: not told.</summary>
    public SpecCode? ControlCode => Control is { } control ? Key.FirstOrDefault(k => Study.SamePerson(k.Spec, control))?.Code : null;

    /// <summary>Whether a code stood for the control spec; null: the control was not told, or the key does not name the code.</summary>
    public bool? IsControl(SpecCode code) => Control is { } control && SpecOf(code) is { } spec ? Study.SamePerson(spec, control) : null;

    /// <summary>Every code that stood for the same spec, fitting by fitting; the code alone where the key does not name it.</summary>
    public IReadOnlyList<SpecCode> CodesLike(SpecCode code) => SpecOf(code) is { } spec
        ? [.. Key.Where(k => Study.SamePerson(k.Spec, spec)).Select(k => k.Code)]
        : [code];

    /// <summary>Notes written before the reveal that hold the name of a spec: the sign of a leak that only a person can judge.</summary>
    public IEnumerable<Note> NotesThatName(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Notes.Where(note => !note.AfterReveal && Key.Any(k => note.Words.Contains(k.Spec, StringComparison.OrdinalIgnoreCase)));
    }
}
