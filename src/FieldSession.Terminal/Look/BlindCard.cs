using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;

namespace FieldSession.Terminal.Look;

/// <summary>The answer card by code alone, for the evening before the key is opened: no key is ever handed to it, and recordings speak only once they are uncovered.</summary>
internal static class BlindCard
{
    /// <summary>The rows.</summary>
    public static ImmutableArray<PageRow> Rows(Study study, MeasuredDay day, Comparison comparison, EarFindings ear, int columns) =>
    [
        .. AnswerSection.Of(new ReportDay(study, new SpecNames(null), day, comparison, ear) { Ring = RingFinding.Of(study) }).Blocks.SelectMany(block => CardRows.Of(block, columns)),
    ];
}
