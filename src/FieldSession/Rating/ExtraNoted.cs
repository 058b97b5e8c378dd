using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Beside the last reading: a level in dB(C), one-third-octave levels at 200 and 250 Hz where a ring sits, or the name of a recording. Each
/// may be given once a reading; nothing of it is mixed into dB(A).
/// </summary>
/// <param name="CDb">C-weighted level, dB(C); null: not read.</param>
/// <param name="Band200Db">One-third-octave level at 200 Hz, dB; null: not read.</param>
/// <param name="Band250Db">One-third-octave level at 250 Hz, dB; null: not read.</param>
/// <param name="Recording">Name of a recording; null: none.</param>
public sealed record ExtraNoted(double? CDb, double? Band200Db, double? Band250Db, string? Recording) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                study.LastRun?.LastReading is { } reading
                    ? Twice(reading.Extras)
                    : new Objection(RatingWords.NoReadingForExtra, RatingWords.ReadingBeforeExtra)
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.LastRun is not { LastReading: { } reading } run)
        {
            return study;
        }

        Extras before = reading.Extras ?? new Extras();
        Extras after = new()
        {
            CDb = CDb ?? before.CDb,
            Band200Db = Band200Db ?? before.Band200Db,
            Band250Db = Band250Db ?? before.Band250Db,
            Recording = Recording ?? before.Recording,
        };
        return study
            .WithLastRun(run with { Passages = run.Passages.Replace(reading, reading with { Extras = after }) })
            .Undoably(study, mark, "extra");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string?[] parts =
        [
            CDb is { } c ? $"{c:0.0#} dB(C)" : null,
            Band200Db is { } l200 ? RatingWords.LevelInBand(l200, 200) : null,
            Band250Db is { } l250 ? RatingWords.LevelInBand(l250, 250) : null,
            Recording is { } recording ? $"recording {recording}" : null,
        ];
        string where =
            after.LastRun?.LastReading is { } reading && after.Plan is { } plan
                ? $" on {reading.Segment} {plan.Route[reading.Segment - 1].Name}"
                : "";
        return new Echo($"extra {string.Join(", ", parts.OfType<string>())}{where}");
    }

    private Objection? Twice(Extras? noted)
    {
        (string Name, bool Both)[] parts =
        [
            ("c", CDb is not null && noted?.CDb is not null),
            ("l200", Band200Db is not null && noted?.Band200Db is not null),
            ("l250", Band250Db is not null && noted?.Band250Db is not null),
            ("rec", Recording is not null && noted?.Recording is not null),
        ];
        string? twice = parts.FirstOrDefault(part => part.Both).Name;
        return twice is null ? null : new Objection(RatingWords.ExtraIsNotedAlready(twice), RatingWords.UndoWhileLast);
    }
}

/// <summary>Reads <c>extra c=74.2 l200=60.1 l250=58 rec=take12</c>; any part can be left away.</summary>
public static class ExtraText
{
    private const string Form = RatingWords.ExtraForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "extra"))
        {
            return null;
        }

        ExtraNoted extra = new(null, null, null, null);
        foreach (string word in words.Skip(1))
        {
            if (Read(extra, word) is not { } read)
            {
                return Parsed.No(RatingWords.IsNoPartOfExtra(word), Form);
            }

            extra = read;
        }

        return words.Length == 1 ? Parsed.No(RatingWords.ExtraReadingSaysNothing, Form) : Parsed.As(extra);
    }

    private static ExtraNoted? Read(ExtraNoted extra, string word)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        string name = equals < 1 ? "" : word[..equals].ToLowerInvariant();
        string value = word[(equals + 1)..];
        if (name == "rec" && value.Length > 0)
        {
            return extra with { Recording = value };
        }

        return Typed.Number(value) is { } level && LevelRange.IsLevel(level)
            ? name switch
            {
                "c" => extra with { CDb = level },
                "l200" => extra with { Band200Db = level },
                "l250" => extra with { Band250Db = level },
                _ => null,
            }
            : null;
    }
}
