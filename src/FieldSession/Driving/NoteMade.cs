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
    public override Objection? ObjectionIn(Study study) =>
        Gate.ForWriting(study) ?? (Run is { } run && Segment is { } segment ? StopGate.ObjectionToPlace(study, run, segment) : null);

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
        string where = note.Segment is { } segment && after.Plan is { } plan ? $" on {segment} {plan.Route[segment - 1].Name}" : "";
        return new Echo($"note{where}: {Words}");
    }
}

/// <summary>Reads <c>;3</c>, a note phrase of the plan, <c>; free words</c>, and <c>note 2.5 words</c> on run 2, segment 5.</summary>
public static class NoteText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Plan? plan)
    {
        ArgumentNullException.ThrowIfNull(text);
        string line = text.Trim();
        if (line.Length > 0 && line[0] == ';')
        {
            return Of(line[1..].Trim(), plan);
        }

        string[] typed = Typed.Words(line);
        if (typed.Length == 0 || !Typed.Is(typed[0], "note"))
        {
            return null;
        }

        return typed.Length > 1 && ReadingPlace.Parse(typed[1]) is { } place
            ? Placed(Of(string.Join(' ', typed.Skip(2)).TrimStart(';').Trim(), plan), place)
            : Parsed.No(DrivingWords.NoteNamesRunAndSegment, DrivingWords.PlacedNoteForm);
    }

    private static Parsed Placed(Parsed parsed, ReadingPlace place) =>
        parsed.Entry is NoteMade note ? Parsed.As(note with { Run = place.Run, Segment = place.Segment }) : parsed;

    private static Parsed Of(string words, Plan? plan)
    {
        if (words.Length == 0)
        {
            return Parsed.No(DrivingWords.NoteIsEmpty, DrivingWords.NoteOrPhraseForm);
        }

        if (words.Length == 1 && char.IsAsciiDigit(words[0]))
        {
            return Phrase(words[0] - '0', plan);
        }

        // a reading behind a ';' by mistake must not become a note
        return words.Any(char.IsAsciiDigit) && !words.Any(char.IsLetter)
            ? Parsed.No(DrivingWords.FiguresAreNoNote, DrivingWords.ReadingWithoutSign)
            : Parsed.As(new NoteMade(words));
    }

    private static Parsed Phrase(int number, Plan? plan)
    {
        int known = plan?.Phrases.Count ?? 0;
        return number >= 1 && number <= known
            ? Parsed.As(new NoteMade(plan!.Phrases[number - 1]))
            : Parsed.No(DrivingWords.PlanHasNoPhrase(number), known == 0 ? JournalWords.NoteForm : DrivingWords.PhrasesOfPlanAre(known));
    }
}

/// <summary>Whose words the last note was: the driver's or the co-driver's.</summary>
/// <param name="Line">Journal line of the note.</param>
/// <param name="Who">Name of the person, or the word for the seat where the plan names nobody.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record NoteAttributed(int Line, string Who, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Line);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                study.Notes.FindLast(n => n.Mark.Name == Place) switch
                {
                    null => new Objection(DrivingWords.LineIsNoNote(Line), DrivingWords.NoteBeforeSpeaker),
                    { Who: { } said } when said == Who => new Objection(
                        DrivingWords.NoteIsTheirsAlready(Who),
                        DrivingWords.NothingToCorrect
                    ),
                    _ => null,
                }
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        int at = study.Notes.FindLastIndex(n => n.Mark.Name == Place);
        return at < 0
            ? study
            : (study with { Notes = study.Notes.SetItem(at, study.Notes[at] with { Who = Who }) }).Undoably(study, mark, $"note by {Who}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo($"note by {Who}: {after.Notes.FindLast(n => n.Mark.Name == Place)?.Words}");
    }
}
