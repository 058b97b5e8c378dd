using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

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

    private static Parsed Placed(Parsed parsed, ReadingPlace place) => parsed.Entry is NoteMade note
        ? Parsed.As(note with { Run = place.Run, Segment = place.Segment })
        : parsed;

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
