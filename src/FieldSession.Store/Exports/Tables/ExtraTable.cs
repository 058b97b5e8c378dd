using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>What was read beside dB(A).</summary>
internal static class ExtraTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } = new ExportTable<(Run Run, Reading Reading)>(
        "extra",
        "Levels beside dB(A) and recordings: one row a reading that has any.",
        [
            Column.Count<(Run Run, Reading Reading)>("run", "run it was read in", e => e.Run.Number).Always,
            Column.Text<(Run Run, Reading Reading)>("code", "code of the run", e => e.Run.Code.Digits).Always,
            Column.Count<(Run Run, Reading Reading)>("segment_number", "segment it was read on", e => e.Reading.Segment).Always,
            Column.Number<(Run Run, Reading Reading)>("c", "dB(C)", "C-weighted level; empty: not read", e => e.Reading.Extras!.CDb),
            Column.Number<(Run Run, Reading Reading)>("l200", "dB", "one-third-octave level at 200 Hz; empty: not read", e => e.Reading.Extras!.Band200Db),
            Column.Number<(Run Run, Reading Reading)>("l250", "dB", "one-third-octave level at 250 Hz; empty: not read", e => e.Reading.Extras!.Band250Db),
            Column.Text<(Run Run, Reading Reading)>("recording", "name of a recording; empty: none", e => e.Reading.Extras!.Recording),
            Column.Count<(Run Run, Reading Reading)>("line", "journal line of the reading", e => e.Reading.Mark.Place).Always,
        ],
        source => source.Study.Runs.SelectMany(run => run.Readings.Where(reading => reading.Extras is not null).Select(reading => (run, reading))))
    {
        Key = ["line"],
        Links = [new("run", "runs", "run"), new("code", "codes", "code"), new("segment_number", "segments", "segment_number")],
    };
}
