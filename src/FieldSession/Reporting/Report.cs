namespace FieldSession.Reporting;

/// <summary>The report of a day as data; how it looks on paper is for others to say.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Sections">Its sections, in the order they are read.</param>
public sealed record Report(string Title, IReadOnlyList<ReportSection> Sections);

/// <summary>A section of the report.</summary>
/// <param name="Part">Which part of the report it is.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">What it holds.</param>
public sealed record ReportSection(ReportPart Part, string Title, IReadOnlyList<ReportBlock> Blocks)
{
    /// <summary>Whether a report without it, or with its words left out, is an excerpt.</summary>
    public bool IsHonest => Part is ReportPart.Answer or ReportPart.Verdict or ReportPart.Codes or ReportPart.LeftOut or ReportPart.Limits;

    /// <summary>Whether it is there to be looked up, so that a page may fold it.</summary>
    public bool IsDetail =>
        !IsHonest && Part is not (ReportPart.Question or ReportPart.Result or ReportPart.Readings or ReportPart.Provenance);
}

/// <summary>A piece of a section.</summary>
public abstract record ReportBlock;

/// <summary>A heading inside a section.</summary>
/// <param name="Words">The words, not marked up.</param>
public sealed record Subheading(string Words) : ReportBlock;

/// <summary>A plot as data, with a table of the same numbers beside it in its section.</summary>
/// <param name="Title">What is plotted.</param>
public abstract record ReportChart(string Title) : ReportBlock
{
    /// <summary>Whether there is nothing to draw.</summary>
    public abstract bool IsEmpty { get; }

    /// <summary>What the plot shows, in words, for whoever does not see it; not for a plot that <see cref="IsEmpty"/>.</summary>
    public abstract string Words { get; }
}

/// <summary>The sentence that answers, larger than the rest.</summary>
/// <param name="Words">The words, not marked up.</param>
public sealed record Headline(string Words) : ReportBlock;

/// <summary>A paragraph of plain words.</summary>
/// <param name="Words">The words, not marked up.</param>
public sealed record Paragraph(string Words) : ReportBlock;

/// <summary>A list of short lines.</summary>
/// <param name="Items">The lines, not marked up.</param>
public sealed record Points(IReadOnlyList<string> Items) : ReportBlock;

/// <summary>Lines that each begin with what they are about.</summary>
/// <param name="Items">The lines.</param>
public sealed record LabelledLines(IReadOnlyList<LabelledLine> Items) : ReportBlock;

/// <summary>A line of a verdict or of the answer card.</summary>
/// <param name="Label">What it is about, such as "Meter".</param>
/// <param name="Word">The word, such as "NOT RESOLVED"; empty: it is in the words.</param>
/// <param name="Words">What it rests on, without a full stop.</param>
public sealed record LabelledLine(string Label, string Word, string Words)
{
    /// <summary>The whole line.</summary>
    public override string ToString() => Word.Length == 0 ? $"{Label}: {Words}" : $"{Label}: {Word}: {Words}";
}

/// <summary>A table.</summary>
/// <param name="Columns">The heads of its columns.</param>
/// <param name="Rows">Its rows, each with a cell a column.</param>
public sealed record ReportTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : ReportBlock;

/// <summary>The parts of a report, in the order it is read.</summary>
public enum ReportPart
{
    /// <summary>The answer card.</summary>
    Answer,

    /// <summary>The verdict in full.</summary>
    Verdict,

    /// <summary>How to read the report.</summary>
    HowToRead,

    /// <summary>What the day was to answer.</summary>
    Question,

    /// <summary>The codes and the checks of the key.</summary>
    Codes,

    /// <summary>The differences.</summary>
    Result,

    /// <summary>Every reading.</summary>
    Readings,

    /// <summary>What was left out, and why.</summary>
    LeftOut,

    /// <summary>What the day can't say.</summary>
    Limits,

    /// <summary>Kinds and segments.</summary>
    Explored,

    /// <summary>What the recordings hear.</summary>
    Ring,

    /// <summary>Ratings and forced choices.</summary>
    Ear,

    /// <summary>The energy days.</summary>
    Energy,

    /// <summary>Car, tyres, meter and people.</summary>
    Facts,

    /// <summary>Calibration, weather and route.</summary>
    Conditions,

    /// <summary>The checks.</summary>
    Checks,

    /// <summary>What was predicted.</summary>
    Predictions,

    /// <summary>The notes.</summary>
    Notes,

    /// <summary>What pins the report to its journal.</summary>
    Provenance,
}

/// <summary>What pins a report to its journal and its program.</summary>
/// <param name="LineCount">Lines of the journal.</param>
/// <param name="HeadHash">Hash of its last line.</param>
/// <param name="Version">Version of the program.</param>
public sealed record Provenance(int LineCount, string HeadHash, string Version);
