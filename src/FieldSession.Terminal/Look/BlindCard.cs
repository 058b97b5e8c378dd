using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal.Look;

/// <summary>The answer card by code alone, for the evening before the key is opened: no key is ever handed to it, and recordings speak only once they are uncovered.</summary>
internal static class BlindCard
{
    /// <summary>The rows; where there are recordings, below them the ring by segment, or that it is covered.</summary>
    public static ImmutableArray<PageRow> Rows(Study study, MeasuredDay day, Comparison comparison, EarFindings ear, int columns)
    {
        RingFinding? ring = RingFinding.Of(study);
        return
        [
            .. AnswerSection.Of(new ReportDay(study, new SpecNames(null), day, comparison, ear) { Ring = ring }).Blocks.SelectMany(block => CardRows.Of(block, columns)),
            .. RingWords.Of(study, ring).SelectMany(line => line.Length <= columns ? [line] : Wrapped.Lines(line, columns)).Select(line => PageRow.Of(line)),
        ];
    }
}
