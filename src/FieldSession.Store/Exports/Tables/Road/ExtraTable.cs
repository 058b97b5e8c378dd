using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>What was read beside dB(A).</summary>
internal static class ExtraTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<ExtraRow>(
            "extra",
            "Levels beside dB(A) and recordings: one row a reading that has any.",
            [
                Column.Count<ExtraRow>("run", "run it was read in", e => e.Run.Number).Always,
                Column.Text<ExtraRow>("code", "code of the run", e => e.Run.Code.Digits).Always,
                Column.Count<ExtraRow>("segment_number", "segment it was read on", e => e.Reading.Segment).Always,
                Column.Number<ExtraRow>("c", "dB(C)", "C-weighted level; empty: not read", e => e.Reading.Extras!.CDb),
                Column.Number<ExtraRow>(
                    "l200",
                    "dB",
                    "one-third-octave level at 200 Hz; empty: not read, or covered before the last prediction",
                    e => e.IsOpen ? e.Reading.Extras!.Band200Db : null
                ),
                Column.Number<ExtraRow>(
                    "l250",
                    "dB",
                    "one-third-octave level at 250 Hz; empty: not read, or covered before the last prediction",
                    e => e.IsOpen ? e.Reading.Extras!.Band250Db : null
                ),
                Column.Text<ExtraRow>("recording", "name of a recording; empty: none", e => e.Reading.Extras!.Recording),
                Column.Count<ExtraRow>("line", "journal line of the reading", e => e.Reading.Mark.Place).Always,
            ],
            source =>
                source.Study.Runs.SelectMany(run =>
                    run.Readings.Where(reading => reading.Extras is not null)
                        .Select(reading => new ExtraRow(run, reading, RingCover.IsOpen(source.Study)))
                )
        )
        {
            Key = ["line"],
            Links = [new("run", "runs", "run"), new("code", "codes", "code"), new("segment_number", "segments", "segment_number")],
        };
}

/// <summary>A reading with levels beside dB(A).</summary>
/// <param name="Run">Its run.</param>
/// <param name="Reading">The reading.</param>
/// <param name="IsOpen">Whether bands that hold the ring may be told.</param>
internal sealed record ExtraRow(Run Run, Reading Reading, bool IsOpen);
