using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The amendments.</summary>
internal static class AmendmentsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Amendment>(
            "amendments",
            "What was changed of the plan after it was frozen: one row a change.",
            [
                Column.Count<Amendment>("line", "journal line", a => a.Mark.Place).Always,
                Column.Time<Amendment>("at", "when it was made", a => a.Mark.At).Always,
                Column.Text<Amendment>("what", "what was changed, in the word of plan.toml", a => a.What).Always,
                Column.Text<Amendment>("from", "what it was before", a => a.From),
                Column.Text<Amendment>("to", "what it has been since then", a => a.To),
                Column.Text<Amendment>("reason", "why, in the crew's words", a => a.Reason).Always,
                Column.Count<Amendment>("after_run", "runs driven by then", a => a.AfterRun).Always,
                Column
                    .YesNo<Amendment>("order_was_driven", "whether the order was driven to its end by then", a => a.OrderWasDriven)
                    .Always,
                Column
                    .YesNo<Amendment>("results_were_seen", "whether somebody may have seen a comparison before", a => a.ResultsWereSeen)
                    .Always,
            ],
            source => source.Study.Amendments
        )
        {
            Key = ["line"],
        };
}
