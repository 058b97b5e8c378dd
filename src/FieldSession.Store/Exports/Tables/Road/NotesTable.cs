using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The notes.</summary>
internal static class NotesTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Note>(
            "notes",
            "What somebody said or saw: one row a note.",
            [
                Column.Count<Note>("line", "journal line", n => n.Mark.Place).Always,
                Column.Time<Note>("at", "when it was made", n => n.Mark.At).Always,
                Column.Count<Note>("run", "run it belongs to; empty: said outside a run", n => n.Run),
                Column.Count<Note>("segment_number", "segment it belongs to; empty: none", n => n.Segment),
                Column.Text<Note>("who", "who said it", n => n.Who),
                Column.Text<Note>("words", "the note", n => n.Words).Always,
                Column
                    .YesNo<Note>("typed_later", "whether it was logged on paper and typed in afterwards", n => n.Mark.IsTypedLater)
                    .Always,
                Column.YesNo<Note>("after_reveal", "whether it was made after the reveal", n => n.AfterReveal).Always,
            ],
            source => source.Study.Notes
        )
        {
            Key = ["line"],
            Links = [new("run", "runs", "run"), new("segment_number", "segments", "segment_number")],
        };
}
