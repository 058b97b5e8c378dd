using System.Globalization;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// Reads what mends a run at a stop: <c>confirm 2.5</c>, <c>correct 2.5 58-60</c>, <c>shift 2.5 +1</c> (run 2, from segment
/// 5 on), and whose words the last note was: <c>d</c> the driver's, <c>c</c> the co-driver's.
/// </summary>
public static class StopText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        return words switch
        {
            [] => null,
            [var only] when Typed.Is(only, "d") => Speaker(study, CrewMember.DriverSeat),
            [var only] when Typed.Is(only, "c") => Speaker(study, CrewMember.CoDriverSeat),
            [var first, ..] when Typed.Is(first, "confirm") => Confirm(words),
            [var first, ..] when Typed.Is(first, "correct") => Correct(words),
            [var first, ..] when Typed.Is(first, "shift") => Shift(words),
            _ => null,
        };
    }

    private static Parsed Speaker(Study study, string seat)
    {
        string who = study.Plan?.Crew.FirstOrDefault(m => m.Seat == seat)?.Name ?? seat;
        return study.Notes.Count == 0
            ? Parsed.No(DrivingWords.ThereIsNoNoteYet, DrivingWords.WriteNoteFirst)
            : Parsed.As(new NoteAttributed(study.Notes[^1].Mark.Number, who, study.Notes[^1].Mark.Strand));
    }

    private static Parsed Confirm(string[] words) => words.Length == 2 && PlaceIn(words[1]) is { } place
        ? Parsed.As(new ReadingConfirmed(place.Run, place.Segment))
        : Parsed.No(DrivingWords.ConfirmNamesRunAndSegment, DrivingWords.ConfirmForm);

    private static Parsed Correct(string[] words)
    {
        const string Form = DrivingWords.CorrectionForm;
        if (words.Length < 3 || PlaceIn(words[1]) is not { } place)
        {
            return Parsed.No(DrivingWords.CorrectionNamesRunAndSegment, Form);
        }

        return ReadingText.Parse(string.Join(' ', words.Skip(2))) switch
        {
            { Entry: ReadingTaken { Spoilt: null } reading } => Parsed.As(new ReadingCorrected(place.Run, place.Segment, reading.Levels)),
            { Objection: { } objection } => new Parsed(null, objection),
            _ => Parsed.No(DrivingWords.CorrectionIsNoReadingAlone, Form),
        };
    }

    private static Parsed Shift(string[] words) =>
        words.Length == 3 && PlaceIn(words[1]) is { } place &&
        int.TryParse(words[2], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int by) && by is >= -1000 and <= 1000
            ? Parsed.As(new RunShifted(place.Run, place.Segment, by))
            : Parsed.No(DrivingWords.ShiftNamesRunAndSegment, DrivingWords.ShiftForm);

    private static (int Run, int Segment)? PlaceIn(string text) =>
        text.Split('.') is [var run, var segment] && Typed.Count(run) is { } r && Typed.Count(segment) is { } s ? (r, s) : null;
}
