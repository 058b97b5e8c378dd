using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The route.</summary>
internal static class SegmentsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Segment>(
            "segments",
            "The route of the plan: one row a segment, in driven order.",
            [
                Column.Count<Segment>("segment_number", "place in the route, from 1", s => s.Number).Always,
                Column.Text<Segment>("segment", "the crew's name of it", s => s.Name).Always.Unique,
                Column.Text<Segment>("kind", "kind of surface: impact, or a word for a steady one", s => s.Kind.Word).Always,
                Column
                    .Text<Segment>("class", "how it is read: steady (a range) or impact (a peak)", s => ClassWord(s))
                    .Always.OneOf("steady", "impact"),
                Column.Number<Segment>("speed_kmh", "km/h", "planned speed", s => s.Speed.Kmh).Always,
                Column.Number<Segment>("length_m", "m", "length", s => s.Length.Metres).Always,
                Column.Number<Segment>("limit_kmh", "km/h", "posted limit", s => s.Limit?.Kmh),
                Column.Number<Segment>("nominal_db", "dB", "level expected before the day", s => s.NominalDb),
                Column.Text<Segment>("start_mark", "what is seen where it begins", s => s.StartMark),
                Column.Text<Segment>("phrase", "its own note phrase", s => s.Phrase),
            ],
            source => source.Study.Plan?.Route ?? []
        )
        {
            Key = ["segment_number"],
        };

    /// <summary>The word of a segment's class.</summary>
    public static string ClassWord(Segment segment) => segment.Kind.IsImpact ? "impact" : "steady";
}
