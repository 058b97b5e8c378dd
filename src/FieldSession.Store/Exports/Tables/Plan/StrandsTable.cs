using FieldSession.Journal;

namespace FieldSession.Store.Exports.Tables;

/// <summary>How far each laptop's strand goes, by which copies and earlier states of a study are told.</summary>
internal static class StrandsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<IGrouping<string, Line>>(
            "strands",
            "How far the journal goes: one row a strand, the chain of lines of one laptop.",
            [
                Column.Text<IGrouping<string, Line>>("strand", "16 hex digits", s => s.Key).Always,
                Column.Count<IGrouping<string, Line>>("lines", "how many lines it has", s => s.Count()).Always,
                Column.Text<IGrouping<string, Line>>("head", "hash of its last line", s => s.Last().Hash).Always,
            ],
            source => source.Lines.GroupBy(line => line.Strand)
        )
        {
            Key = ["strand"],
        };
}
