using FieldSession.Acoustics;
using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The levels that recordings hold, by reading and band; covered before the last prediction is locked.</summary>
internal static class BandsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<HeardBand>(
            "bands",
            "Levels of bands in the recordings: one row a reading that was heard and a band. Only once the ring is uncovered.",
            [
                Column.Count<HeardBand>("run", "run that was recorded", row => row.Run.Number).Always,
                Column.Text<HeardBand>("code", "code of the run", row => row.Run.Code.Digits).Always,
                Column.Count<HeardBand>("segment_number", "segment", row => row.Reading.Segment).Always,
                Column.Text<HeardBand>("band", "middle of the third-octave band in Hz, or 'ring'", row => row.Band).Always,
                Column.Number<HeardBand>(
                    "level",
                    "dB",
                    "level, energy mean; re full scale where the chain is not calibrated; empty: not known",
                    row => row.LevelDb
                ),
                Column.YesNo<HeardBand>("counts", "false: the recorder clipped, or the reading is left out", row => row.Counts).Always,
                Column.Count<HeardBand>("line", "journal line of the reading", row => row.Reading.Mark.Place).Always,
            ],
            source => RingCover.IsOpen(source.Study) ? Rows(source.Study) : []
        )
        {
            Is = source => source.Study.Recordings.Count > 0,
            Hidden = source => source.RingHiddenBecause,
            Key = ["line", "band"],
            Links = [new("run", "runs", "run"), new("code", "codes", "code"), new("segment_number", "segments", "segment_number")],
        };

    private static IEnumerable<HeardBand> Rows(Study study) =>
        from recording in study.Recordings
        let run = study.Runs[recording.Run - 1]
        let gain = ChainCalibration.Of(study, recording.Chain).GainDb ?? 0
        from reading in run.Readings
        let heard = recording.During(reading)
        where heard is not null
        from band in BandsOf(heard)
        select new HeardBand(run, reading, band.Name, band.LevelDb + gain, !heard.IsOverloaded && !reading.LeftOut);

    private static IEnumerable<(string Name, double? LevelDb)> BandsOf(HeardSegment heard) =>
        (heard.BandsDb ?? [])
            .Select((level, i) => ($"{ThirdOctave.MiddleHz(HeardSegment.LowestBand + i):0}", level))
            .Append(("ring", heard.RingDb));
}

/// <summary>The level of a band during a reading.</summary>
/// <param name="Run">The run.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Band">The band.</param>
/// <param name="LevelDb">Its level, dB; null: not known.</param>
/// <param name="Counts">Whether it counts.</param>
internal sealed record HeardBand(Run Run, Reading Reading, string Band, double? LevelDb, bool Counts);
