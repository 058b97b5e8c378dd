namespace FieldSession.Reporting;

/// <summary>The report of a day as data; how it looks on paper is for others to say.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Sections">Its sections, in the order they are read.</param>
public sealed record Report(string Title, IReadOnlyList<ReportSection> Sections);

/// <summary>A section of the report.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record ReportSection(string Title, IReadOnlyList<ReportBlock> Blocks);

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

/// <summary>A paragraph of plain words.</summary>
/// <param name="Words">The words, not marked up.</param>
public sealed record Paragraph(string Words) : ReportBlock;

/// <summary>A list of short lines.</summary>
/// <param name="Items">The lines, not marked up.</param>
public sealed record Points(IReadOnlyList<string> Items) : ReportBlock;

/// <summary>A table.</summary>
/// <param name="Columns">The heads of its columns.</param>
/// <param name="Rows">Its rows, each with a cell a column.</param>
public sealed record ReportTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : ReportBlock;
