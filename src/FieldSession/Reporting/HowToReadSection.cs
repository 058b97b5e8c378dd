namespace FieldSession.Reporting;

/// <summary>Half a page for whoever reads such a report for the first time.</summary>
public static class HowToReadSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of() => new(ReportPart.HowToRead, HowToReadWords.Title,
    [
        new LabelledLines(
        [
            new LabelledLine("Blind", "", HowToReadWords.Blind),
            new LabelledLine("Interval", "", HowToReadWords.Interval),
            new LabelledLine("Margin", "", HowToReadWords.Margin),
            new LabelledLine("NOT RESOLVED", "", HowToReadWords.NotResolved),
            new LabelledLine("Could have shown", "", HowToReadWords.CouldHaveShown),
            new LabelledLine("Segments", "", HowToReadWords.Segments),
            new LabelledLine("Flags", "", HowToReadWords.Flags),
            new LabelledLine("Explored", "", HowToReadWords.Explored),
            new LabelledLine("Ear", "", HowToReadWords.Ear),
        ]),
    ]);
}
