using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The checks with typed values; calibration and weather have tables of their own.</summary>
internal static class ChecksTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<CheckedValue>(
            "checks",
            "The checks that were made: one row a typed value.",
            [
                Column.Count<CheckedValue>("line", "journal line of the check", c => c.Check.Mark.Place).Always,
                Column.Time<CheckedValue>("at", "when it was made", c => c.Check.Mark.At).Always,
                Column
                    .YesNo<CheckedValue>(
                        "typed_later",
                        "whether it was logged on paper and typed in afterwards",
                        c => c.Check.Mark.IsTypedLater
                    )
                    .Always,
                Column.Text<CheckedValue>("check", "name of the check", c => c.Check.Name).Always,
                Column.Text<CheckedValue>("value", "name of the value, as in the entry line", c => c.Name).Always,
                Column.Text<CheckedValue>("typed", "what was typed, in the plan's units", c => c.Typed).Always,
                Column
                    .Text<CheckedValue>("answer", "what the whole check answered", c => AnswerWord(c.Check.Answer))
                    .Always.OneOf("records", "warns", "blocks"),
                Column.Text<CheckedValue>("words", "the answer in words", c => c.Check.Words),
                Column.Count<CheckedValue>("after_run", "number of the last run begun before it; 0: none", c => c.Check.Run).Always,
            ],
            source => source.Study.Checks.SelectMany(check => check.Values.Select(value => new CheckedValue(check, value.Key, value.Value)))
        )
        {
            Key = ["line", "value"],
        };

    private static string AnswerWord(CheckAnswer answer) =>
        answer switch
        {
            CheckAnswer.Blocks => "blocks",
            CheckAnswer.Warns => "warns",
            _ => "records",
        };

    private sealed record CheckedValue(CheckRecord Check, string Name, string Typed);
}
