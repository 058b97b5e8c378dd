using System.Text;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reviewing;

namespace FieldSession.Store.Exports;

/// <summary>The blind summary as plain text, with the head hash that pins it: what 'review' prints.</summary>
internal static class SummaryText
{
    /// <summary>The file of an export.</summary>
    public static ExportFile File { get; } = new WrittenFile(
        "summary.txt",
        "text/plain",
        ExportWords.SummaryDescription,
        source => Encoding.UTF8.GetBytes(string.Concat(Lines(source).Select(line => line + "\n"))));

    private static IEnumerable<string> Lines(ExportSource source) =>
    [
        .. ComparisonWords.Of(source.Comparison, source.Day),
        .. ChosenAfterWords.Of(source.Study, source.Day),
        .. EarWords.Of(EarFindings.Of(source.Study, StudyTerms.Of(source.Study))),
        .. RingWords.Of(source.Study, source.Ring),
        .. StudyLegs.ComparisonOf(source.Study) is { } energy ? EnergyWords.Of(energy, source.Study.Plan!.Units).Prepend("") : [],
        "",
        ExportWords.JournalHead(source, source.Lines.Count == 0 ? Line.NoHash : source.Lines[^1].Hash),
    ];
}
