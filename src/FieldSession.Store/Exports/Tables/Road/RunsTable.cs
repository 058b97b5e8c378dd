using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The runs.</summary>
internal static class RunsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Run>(
            "runs",
            "The runs: one row a trip over the route, in driven order.",
            [
                Column.Count<Run>("run", "number, from 1", r => r.Number).Always,
                Column.Text<Run>("code", "code that was driven", r => r.Code.Digits).Always,
                Column.Count<Run>("session", "session it belongs to", r => r.Session).Always,
                Column.Text<Run>("driver", "who drove", r => r.Driver),
                Column.Text<Run>("car", "car that was driven; empty: there is one", r => r.Car),
                Column.Text<Run>(
                    "strand",
                    "strand of the laptop that it was typed on, to which its journal lines belong; empty: the first",
                    r => r.Started.Strand
                ),
                Column.Text<Run>("doubt", "why the code is doubtful", r => r.Doubt),
                Column
                    .Count<Run>(
                        "place",
                        "its place among the runs to be driven, from 1; a run that repeats an aborted one has the same",
                        r => r.Turn + 1
                    )
                    .Always,
                Column.YesNo<Run>("aborted", "whether it was ended before its last segment", r => r.Aborted is not null),
                Column.Text<Run>("abort_cause", "why it was aborted", r => r.Aborted?.Cause),
                Column
                    .YesNo<Run>("typed_later", "whether its start was logged on paper and typed in afterwards", r => r.Started.IsTypedLater)
                    .Always,
                Column.Count<Run>("start_line", "journal line of the start", r => r.Started.Place).Always,
                Column.Time<Run>("start_at", "when it started", r => r.Started.At).Always,
                Column.Count<Run>("end_line", "journal line of the end; empty: still on", r => r.Ended?.Place),
                Column.Time<Run>("end_at", "when it ended; empty: still on", r => r.Ended?.At),
            ],
            source => source.Study.Runs
        )
        {
            Key = ["run"],
            Links = [new("code", "codes", "code"), new("session", "sessions", "session")],
        };
}
