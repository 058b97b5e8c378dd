using FieldSession.Archiving;

namespace FieldSession.Store.Exports.Tables;

/// <summary>What each segment gave: what the archive keeps of it.</summary>
internal static class SegmentYieldTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<ArchivedSegment>(
            "segment_yield",
            "What each segment gave over the whole study: one row a segment.",
            [
                Column.Count<ArchivedSegment>("segment_number", "place in the route, from 1", s => s.Number).Always,
                Column.Count<ArchivedSegment>("taken", "readings taken", s => s.Taken).Always,
                Column.Count<ArchivedSegment>("counted", "of these, readings that count", s => s.Counted).Always,
                Column.Count<ArchivedSegment>("missed", "passages without a reading, in runs that have ended", s => s.Missed).Always,
                Column.Number<ArchivedSegment>("seconds", "s", "how long a run stays on it", s => s.Seconds).Always,
                Column.Number<ArchivedSegment>("nu", "degrees of freedom", "of sd_db", s => s.Nu).Always,
                Column.Number<ArchivedSegment>(
                    "sd_db",
                    "dB",
                    "standard deviation of a reading on it, what a whole run was off taken away; empty: no degrees of freedom",
                    s => s.SdDb
                ),
            ],
            source => ArchivedSegment.Of(source.Study)
        )
        {
            Key = ["segment_number"],
            Links = [new("segment_number", "segments", "segment_number")],
        };
}
