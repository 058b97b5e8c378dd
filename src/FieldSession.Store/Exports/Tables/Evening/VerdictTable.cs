using FieldSession.Reporting;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The verdicts, by code.</summary>
internal static class VerdictTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<VerdictLine>(
            "verdict",
            "What the study says: one row a line of a verdict, for every code against the reference.",
            [
                Column.Text<VerdictLine>("question", "code that is asked about", line => line.Question).Always,
                Column.Text<VerdictLine>("against", "code it is held against", line => line.Against).Always,
                Column
                    .Text<VerdictLine>("line", "which line of the verdict", line => FormatWords.Line(line.Line))
                    .Always.OneOf("meter", "ring", "ear", "worth"),
                Column.Text<VerdictLine>("word", "the word", line => line.Word).Always,
                Column.Text<VerdictLine>("reason", "what it rests on", line => line.Reason).Always,
                Column.Text<VerdictLine>(
                    "hangs_on",
                    "single changes that give another word; empty: none of those tried, or not asked of this line",
                    line => line.HangsOn
                ),
                Column.Count<VerdictLine>(
                    "looks",
                    "how often the order was lengthened after a comparison could be seen; empty: not of the meter",
                    line => line.Looks
                ),
                Column.Number<VerdictLine>(
                    "d",
                    "dB",
                    "code minus reference; empty: not of the meter, or not known",
                    line => line.Estimate?.DifferenceDb
                ),
                Column.Number<VerdictLine>("lo95", "dB", "lower end of its 95 % interval", line => line.Estimate?.Lo95Db),
                Column.Number<VerdictLine>("hi95", "dB", "upper end of its 95 % interval", line => line.Estimate?.Hi95Db),
                Column.Number<VerdictLine>(
                    "p",
                    "probability",
                    "p of the difference, allowing for all comparisons asked at once; empty: none before the plan's end",
                    line => line.Basis?.PDifference
                ),
                Column.Number<VerdictLine>("p_tost", "probability", "p of equivalence, likewise", line => line.Basis?.PEquivalence),
                Column.Number<VerdictLine>("alpha", "probability", "level that p has to stay below", line => line.Basis?.Asked.Difference),
                Column.Number<VerdictLine>("lo", "dB", "lower end of the interval that agrees with the word", line => line.Basis?.LowDb),
                Column.Number<VerdictLine>("hi", "dB", "upper end of the interval that agrees with the word", line => line.Basis?.HighDb),
                Column.Count<VerdictLine>(
                    "left_out",
                    "readings of the two codes that are left out of the clean result",
                    line => line.LeftOut
                ),
                Column
                    .Text<VerdictLine>("key", "what the checks of the key found", line => FormatWords.KeyCheck(line.Key))
                    .OneOf("not open", "holds", "failed"),
            ],
            source => source.Verdicts
        )
        {
            Key = ["question", "against", "line"],
            Links = [new("question", "codes", "code"), new("against", "codes", "code")],
        };
}
