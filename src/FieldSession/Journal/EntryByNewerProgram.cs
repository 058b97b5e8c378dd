using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>An entry of a kind or version that this program does not know. It is kept; nothing more is written after it.</summary>
/// <param name="Kind">Its kind, as named on disk.</param>
/// <param name="Version">Version of that kind.</param>
public sealed record EntryByNewerProgram(string Kind, int Version) : Entry
{
    /// <summary>What is said of a study that holds such entries, a sentence each; empty: it holds none.</summary>
    /// <param name="entries">Its entries; not looked at where it holds none.</param>
    /// <param name="study">The study.</param>
    public static IEnumerable<string> AmongThem(IEnumerable<Entry> entries, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.ReadOnlyBecause is null
            ? []
            : [JournalWords.EntriesAreNotRead([.. entries.OfType<EntryByNewerProgram>().CountBy(entry => entry.Kind)])];
    }

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        new(JournalWords.EntryKindIsUnknown(Kind, Version), JournalWords.UseNewerProgram);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { ReadOnlyBecause = JournalWords.LineNeedsNewerProgram(mark, Kind, Version) };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(JournalWords.EntryOfNewerProgram(Kind));
}

/// <summary>An act that the disk would not take: it does not count, and what was typed is kept so that it can be typed in again.</summary>
/// <param name="At">When it was tried first.</param>
/// <param name="Typed">The typed line; for a fact put together from several answers, a remark that says it.</param>
/// <param name="Because">Why the disk would not take it.</param>
public sealed record UnsavedAct(DateTimeOffset At, string Typed, string Because);
