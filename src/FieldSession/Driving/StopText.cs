using System.Globalization;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// Reads what repairs a run at a stop: <c>confirm 2.5</c>, <c>correct 2.5 58-60</c>, <c>fill 2.5 58-60</c>, <c>shift 2.5 +1</c> (run 2,
/// from segment 5 up to the next gap) or <c>shift 2.5-7 +1</c>, and whose words the last note was: <c>d</c> the driver's, <c>c</c> the
/// co-driver's.
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
            [var first, ..] when Typed.Is(first, "fill") => Fill(words),
            [var first, ..] when Typed.Is(first, "shift") => Shift(words, study),
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

    private static Parsed Confirm(string[] words) =>
        words.Length == 2 && ReadingPlace.Parse(words[1]) is { } place
            ? Parsed.As(new ReadingConfirmed(place.Run, place.Segment, place.Take))
            : Parsed.No(DrivingWords.ConfirmNamesRunAndSegment, DrivingWords.ConfirmForm);

    private static Parsed Correct(string[] words)
    {
        const string Form = DrivingWords.CorrectionForm;
        if (words.Length < 3 || ReadingPlace.Parse(words[1]) is not { } place)
        {
            return Parsed.No(DrivingWords.CorrectionNamesRunAndSegment, Form);
        }

        return ReadingText.Parse(string.Join(' ', words.Skip(2))) switch
        {
            { Entry: ReadingTaken { Spoilt: null } reading } => Parsed.As(
                new ReadingCorrected(place.Run, place.Segment, reading.Levels, place.Take)
            ),
            { Objection: { } objection } => new Parsed(null, objection),
            _ => Parsed.No(DrivingWords.CorrectionIsNoReadingAlone, Form),
        };
    }

    private static Parsed Fill(string[] words)
    {
        const string Form = DrivingWords.FillForm;
        if (words.Length < 3 || ReadingPlace.Parse(words[1]) is not { Take: null } place)
        {
            return Parsed.No(DrivingWords.FillNamesRunAndSegment, Form);
        }

        return ReadingText.Parse(string.Join(' ', words.Skip(2))) switch
        {
            { Entry: ReadingTaken reading } => Parsed.As(
                new ReadingFilled(place.Run, place.Segment, reading.Levels, reading.Swapped, reading.Spoilt, reading.Words)
            ),
            { Objection: { } objection } => new Parsed(null, objection),
            _ => Parsed.No(DrivingWords.FillNamesRunAndSegment, Form),
        };
    }

    // without a last segment the stretch goes as far as readings follow each other
    private static Parsed Shift(string[] words, Study study)
    {
        if (
            words.Length != 3
            || !int.TryParse(words[2], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int by)
            || by is < -1000 or > 1000
        )
        {
            return Parsed.No(DrivingWords.ShiftNamesRunAndSegment, DrivingWords.ShiftForm);
        }

        string[] ends = words[1].Split('-');
        return (ReadingPlace.Parse(ends[0]), ends.Length == 2 ? Typed.Count(ends[1]) : null, ends.Length) switch
        {
            ({ Take: null } place, { } last, 2) => Parsed.As(new RunShifted(place.Run, place.Segment, by, last)),
            ({ Take: null } place, _, 1) => Parsed.As(
                new RunShifted(place.Run, place.Segment, by, Stretch.EndFrom(study, place.Run, place.Segment))
            ),
            _ => Parsed.No(DrivingWords.ShiftNamesRunAndSegment, DrivingWords.ShiftForm),
        };
    }
}

/// <summary>What may only be done at a stop: reading back, repairing, confirming. Nothing asks for it while the car moves.</summary>
public static class StopGate
{
    /// <summary>What rules out repairing a run now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                study switch
                {
                    { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), DrivingWords.FixAtNextStop),
                    { Runs.Count: 0 } => new Objection(JournalWords.NothingHasBeenDriven, DrivingWords.DriveRunFirst),
                    _ => null,
                }
            );
    }

    /// <summary>What rules out a run and a segment that were typed; null: both are there.</summary>
    public static Objection? ObjectionToPlace(Study study, int run, int segment)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (!study.HasRun(run))
        {
            return new Objection(DrivingWords.ThereIsNoRun(run), DrivingWords.RunsAreTo(study.Runs.Count));
        }

        return segment >= 1 && segment <= study.Plan!.Route.Count
            ? null
            : new Objection(JournalWords.ThereIsNoSegment(segment), JournalWords.RouteHasSegmentsTo(study));
    }
}
