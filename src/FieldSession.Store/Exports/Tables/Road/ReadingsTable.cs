using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>
/// The readings: first the columns that 'compare' reads, which gives the same comparison as the study itself, then all that the
/// journal knows besides.
/// </summary>
internal static class ReadingsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<ReadingRow>(
            "readings",
            "The readings: one row a reading, and one with empty low and high for each planned reading that was missed. "
                + "'compare readings.csv' gives the study's own comparison.",
            [
                Column.Count<ReadingRow>("run", "number of the run, in driven order", r => r.Run.Number).Always,
                Column.Text<ReadingRow>("code", "code that was driven", r => r.Run.Code.Digits).Always,
                Column.Text<ReadingRow>("segment", "name of the segment", r => r.Segment.Name).Always,
                Column.Text<ReadingRow>("kind", "kind of surface: impact, or a word for a steady one", r => r.Segment.Kind.Word).Always,
                Column.Number<ReadingRow>("low", "dB", "lowest level seen; empty: missed", r => r.Reading?.Levels.LowDb),
                Column.Number<ReadingRow>("high", "dB", "highest level seen, or the peak; empty: missed", r => r.Reading?.Levels.HighDb),
                Column.Text<ReadingRow>(
                    "spoilt",
                    "why the reading is left out: traffic, wind, speed, road, noise, entry, void session, bracket driven again, run "
                        + "aborted, filled at the stop, or conflict settled; empty: it counts",
                    r => r.Level is { Spoilt: true } level ? level.Cause : null
                ),
                Column.Number<ReadingRow>(
                    "minutes",
                    "min",
                    "from the first run's start to the middle of this run; empty: the times are not believed",
                    r => r.Minutes
                ),
                Column
                    .Number<ReadingRow>("seconds", "s", "how long a run stays on the segment at its planned speed", r => r.Segment.Seconds)
                    .Always,
                Column
                    .Text<ReadingRow>("class", "how the segment is read: steady or impact", r => SegmentsTable.ClassWord(r.Segment))
                    .Always.OneOf("steady", "impact"),
                Column.Count<ReadingRow>("session", "session of the run; of cars side by side, the first of theirs", r => r.Session).Always,
                Column.Text<ReadingRow>(
                    "note",
                    "what was said on this segment of this run, cut by ' / '; one by one in notes.csv",
                    r => r.Note
                ),
                Column.Text<ReadingRow>("car", "car that was driven; empty: there is one", r => r.Car),
                Column.Text<ReadingRow>("slot", "runs driven side by side share it; empty: driven alone", r => r.Slot),
                Column.Text<ReadingRow>(
                    "order_runs",
                    "runs of the order as planned, then after each time it was lengthened when a comparison could be seen; the same "
                        + "in every row",
                    r => r.OrderRuns
                ),
                Column.Count<ReadingRow>("segment_number", "place of the segment in the route, from 1", r => r.Segment.Number).Always,
                Column.Count<ReadingRow>("take", "which reading of this run and segment it is, from 1", r => r.Take).Always,
                Column.Text<ReadingRow>(
                    "flag",
                    "what spoilt it, late flags included; empty: no flag",
                    r => r.Reading?.Spoilt?.Cause.Word()
                ),
                Column.Text<ReadingRow>("flag_words", "more about what spoilt it", r => r.Reading?.Spoilt?.Words),
                Column.YesNo<ReadingRow>(
                    "flag_late",
                    "whether the flag came after the next segment had begun, so that the reading still counts; empty: no flag",
                    r => r.Reading?.Spoilt?.Late
                ),
                Column.Text<ReadingRow>("doubt", "what is doubtful about the reading", r => r.Reading?.Doubt),
                Column.YesNo<ReadingRow>(
                    "typed_later",
                    "whether it was logged on paper and typed in afterwards",
                    r => r.Mark?.IsTypedLater
                ),
                Column.YesNo<ReadingRow>(
                    "filled",
                    "whether it was filled in at a stop and not typed while driving",
                    r => r.Reading?.FilledAtStop
                ),
                Column.YesNo<ReadingRow>("swapped", "whether the range was typed high first", r => r.Reading?.Swapped),
                Column.Number<ReadingRow>("speed_kmh", "km/h", "planned speed of the segment", r => r.Segment.Speed.Kmh).Always,
                Column.Text<ReadingRow>("driver", "who drove", r => r.Run.Driver),
                Column.Count<ReadingRow>("line", "journal line; empty: missed because the run ended before", r => r.Mark?.Place),
                Column.Time<ReadingRow>(
                    "at",
                    "when it was typed; where it was typed later, when the paper says it was read",
                    r => r.Mark?.At
                ),
            ],
            source =>
                ReadingRow
                    .Of(source)
                    .Select(row => row with { OrderRuns = source.Day.OrderRuns is { } runs ? string.Join(' ', runs) : null })
        )
        {
            Key = ["run", "segment_number", "take"],
            Links =
            [
                new("run", "runs", "run"),
                new("code", "codes", "code"),
                new("segment_number", "segments", "segment_number"),
                new("session", "sessions", "session"),
            ],
        };
}
