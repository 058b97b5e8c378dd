using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The overrides.</summary>
internal static class OverridesTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Override>(
            "overrides",
            "Blocking checks that the crew went over: one row an override.",
            [
                Column.Count<Override>("line", "journal line", o => o.Mark.Place).Always,
                Column.Time<Override>("at", "when it was given", o => o.Mark.At).Always,
                Column.Text<Override>("check", "name of the check", o => o.Check).Always,
                Column
                    .Count<Override>(
                        "before_run",
                        "number of the run that it let start; beyond the last run: none was started",
                        o => o.BeforeRun
                    )
                    .Always,
                Column.Text<Override>("reason", "why, in the crew's words", o => o.Reason).Always,
            ],
            source => source.Study.Overrides
        )
        {
            Key = ["line"],
        };
}
