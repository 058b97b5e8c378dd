using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>
/// A reading was spoilt: it is left out of the clean result. A flag given after the next segment has begun is late: it
/// is kept and used in the sensitivity result only.
/// </summary>
/// <param name="Reading">Journal line of the reading.</param>
/// <param name="Cause">What spoilt it.</param>
/// <param name="Words">More in the crew's words; null: none.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record ReadingSpoilt(int Reading, SpoiltCause Cause, string? Words = null, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Reading);

    /// <inheritdoc/>
    public override bool HoldsFlag => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        Flags.ObjectionTo(study, Place)
        ?? (
            Flags.Find(study, Place)?.Reading.Spoilt is { } spoilt && spoilt.Cause == Cause && spoilt.Words == Words
                ? new Objection(FlaggingWords.FlagIsThatAlready(Cause), FlaggingWords.FlagAgainTakesBack(Cause))
                : null
        );

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Flags
            .With(
                study,
                Place,
                reading => reading with { Spoilt = new Spoiling(Cause, Words, IsLate(study, reading)), FlagTakenBack = null }
            )
            .Undoably(study, mark, $"flag {Cause.Word()}", Place);
    }

    // of what was typed in from paper, only the paper can say that it was flagged on the spot
    private bool IsLate(Study study, Reading reading) =>
        Paper is null ? reading.Mark.IsTypedLater || Flags.IsLate(study, reading) : Paper.FlaggedOnSpot != true;

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string late = Flags.Find(after, Place) is { Reading.Spoilt.Late: true } ? FlaggingWords.FlaggedLate : "";
        return new Echo($"{Flags.InWords(after, Place)} spoilt by {Cause.Word()}{(Words is null ? "" : $": {Words}")}{late}");
    }
}

/// <summary>A flag was a mistake: the reading is clean again.</summary>
/// <param name="Reading">Journal line of the reading.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record FlagTakenBack(int Reading, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Reading);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Flags.ObjectionTo(study, Place);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Flags
            .With(study, Place, reading => reading with { Spoilt = null, FlagTakenBack = reading.Spoilt?.Cause })
            .Undoably(study, mark, FlaggingWords.FlagTakenBack, Place);
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(FlaggingWords.ReadingIsCleanAgain(Flags.InWords(after, Place)));
}

/// <summary>
/// Reads a cause letter alone (<c>t</c>, <c>w</c>, <c>s</c>, <c>r</c>, <c>n</c>, <c>e</c>), which flags the last reading and
/// given again takes the flag back, and <c>flag 2.5 t words</c>, which flags the reading of run 2 on segment 5.
/// </summary>
public static class FlagText
{
    private const string Form = FlaggingWords.FlagForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0)
        {
            return null;
        }

        if (words[0].Length == 1 && SpoiltCauses.FromLetter(words[0][0]) is { } cause)
        {
            return study.LastRun?.LastReading is { } last
                ? Toggle(last, cause, words.Skip(1))
                : Parsed.No(FlaggingWords.ThereIsNoReadingToFlag, FlaggingWords.ReadingBeforeLetter);
        }

        return Typed.Is(words[0], "flag") ? Chosen(study, words) : null;
    }

    private static Parsed Chosen(Study study, string[] words)
    {
        if (
            words.Length < 3
            || ReadingPlace.Parse(words[1]) is not { } place
            || words[2].Length != 1
            || SpoiltCauses.FromLetter(words[2][0]) is not { } cause
        )
        {
            return Parsed.No(FlaggingWords.FlagNamesReadingAndCause, Form);
        }

        return place.In(study) is { } reading
            ? Toggle(reading, cause, words.Skip(3))
            : Parsed.No(FlaggingWords.ThereIsNoReading(words[1]), Form);
    }

    private static Parsed Toggle(Reading reading, SpoiltCause cause, IEnumerable<string> words)
    {
        string said = string.Join(' ', words);
        bool sameAgain = reading.Spoilt is { } spoilt && spoilt.Cause == cause && said.Length == 0;
        return Parsed.As(
            sameAgain
                ? new FlagTakenBack(reading.Mark.Number, reading.Mark.Strand)
                : new ReadingSpoilt(reading.Mark.Number, cause, said.Length == 0 ? null : said, reading.Mark.Strand)
        );
    }
}
