using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The brackets that were driven again.</summary>
internal static class RerunsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Rerun>(
            "reruns",
            "Brackets that were driven again: one row a bracket. Which drive counts is decided by the plan's rule.",
            [
                Column.Count<Rerun>("line", "journal line", r => r.Mark.Place).Always,
                Column.Time<Rerun>("at", "when it was decided", r => r.Mark.At).Always,
                Column.Count<Rerun>("bracket", "number of the bracket", r => r.Bracket).Always,
                Column.Count<Rerun>("first_run", "number of the first run of the re-run", r => r.FirstRun).Always,
                Column.Count<Rerun>("last_run", "number of its last run", r => r.LastRun).Always,
                Column.Text<Rerun>("reason", "why, in the crew's words", r => r.Reason).Always,
            ],
            source => source.Study.Reruns
        )
        {
            Key = ["line"],
        };
}
