using FieldSession.Comparing;

namespace FieldSession.Store.Exports.Tables;

/// <summary>One class of one code's comparison.</summary>
/// <param name="Code">The code.</param>
/// <param name="Reference">The code it is compared with.</param>
/// <param name="Group">"all", "steady" or "impact".</param>
/// <param name="Found">What was found.</param>
internal sealed record ComparedClass(string Code, string Reference, string Group, ClassComparison Found);

/// <summary>The comparison in figures; all of it is in comparison.json.</summary>
internal static class ComparisonsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<ComparedClass>(
            "comparisons",
            "The blind comparison: one row a code and class of segments, readings that count only. comparison.json has more.",
            [
                Column.Text<ComparedClass>("code", "code that is compared", c => c.Code).Always,
                Column.Text<ComparedClass>("reference", "code it is compared with", c => c.Reference).Always,
                Column
                    .Text<ComparedClass>("class", "all segments, the steady ones or the impacts", c => c.Group)
                    .Always.OneOf("all", "steady", "impact"),
                Column.Count<ComparedClass>("runs", "runs of all codes that enter", c => c.Found.RunsCounted).Always,
                Column.Count<ComparedClass>("segments", "segments that every code was read on", c => c.Found.SegmentsCompared).Always,
                Column.Number<ComparedClass>("d", "dB", "code minus reference; empty: not comparable", c => c.Found.Overall?.DifferenceDb),
                Column.Number<ComparedClass>("se", "dB", "its standard error", c => c.Found.Overall?.StandardErrorDb),
                Column.Number<ComparedClass>("df", "degrees of freedom", "of the standard error", c => c.Found.Overall?.Df),
                Column.Number<ComparedClass>("lo95", "dB", "lower end of its 95 % interval", c => c.Found.Overall?.Lo95Db),
                Column.Number<ComparedClass>("hi95", "dB", "upper end of its 95 % interval", c => c.Found.Overall?.Hi95Db),
                Column.Text<ComparedClass>("verdict", "the word", c => c.Found.Verdict),
            ],
            source => source.Comparison.Comparisons.SelectMany(Rows)
        )
        {
            Key = ["code", "class"],
            Links = [new("code", "codes", "code"), new("reference", "codes", "code")],
        };

    private static IEnumerable<ComparedClass> Rows(CodeComparison one) =>
        from found in new (string Group, ClassComparison? Found)[]
        {
            ("all", one.Classes.All),
            ("steady", one.Classes.Steady),
            ("impact", one.Classes.Impact),
        }
        where found.Found is not null
        select new ComparedClass(one.Code, one.Reference, found.Group, found.Found);
}
