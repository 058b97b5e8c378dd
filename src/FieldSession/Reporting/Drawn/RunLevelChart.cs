using System.Globalization;

namespace FieldSession.Reporting;

/// <summary>
/// A plot of the mean level of every run over the day, with the drift of each spec as a line. The table of runs is beside it.
/// </summary>
/// <param name="Title">What is plotted.</param>
/// <param name="Points">The runs, in driven order.</param>
/// <param name="Drifts">One line for each spec that was driven more than once; empty: no drift is known.</param>
/// <param name="OverTime">True: places are hours of the day, UTC; false: they are numbers of runs.</param>
public sealed record RunLevelChart(string Title, IReadOnlyList<RunLevelPoint> Points, IReadOnlyList<DriftLine> Drifts, bool OverTime)
    : ReportChart(Title)
{
    /// <summary>The drift as people read it; null: not known.</summary>
    public string? DriftShown { get; init; }

    /// <inheritdoc/>
    public override bool IsEmpty => Points.Count == 0;

    /// <inheritdoc/>
    public override string Words
    {
        get
        {
            IEnumerable<string> specs = Points
                .GroupBy(point => point.Name)
                .Select(spec =>
                    ReportingWords.SpecLevels(
                        spec.Key,
                        Db(spec.Min(point => point.LevelDb)),
                        Db(spec.Max(point => point.LevelDb)),
                        spec.Count()
                    )
                );
            return $"Plot: {Title}: "
                + $"{string.Join("; ", specs)}.{(DriftShown is { } drift ? $" Drift of one and the same spec: {drift}." : "")}";
        }
    }

    private static string Db(double db) => db.ToString("0.0", CultureInfo.CurrentCulture);
}

/// <summary>A run in a <see cref="RunLevelChart"/>.</summary>
/// <param name="Run">Its number.</param>
/// <param name="Name">How its spec is called.</param>
/// <param name="At">Its place: the hour of the day of its middle, UTC, or its number.</param>
/// <param name="LevelDb">Its mean level, dB(A).</param>
public sealed record RunLevelPoint(int Run, string Name, double At, double LevelDb);

/// <summary>The drift of one spec in a <see cref="RunLevelChart"/>, a straight line.</summary>
/// <param name="Name">How the spec is called.</param>
/// <param name="FromAt">Place of its beginning.</param>
/// <param name="FromDb">Level there, dB(A).</param>
/// <param name="ToAt">Place of its end.</param>
/// <param name="ToDb">Level there, dB(A).</param>
public sealed record DriftLine(string Name, double FromAt, double FromDb, double ToAt, double ToDb);

/// <summary>Every reading of a day, a row a segment and a column a run, the runs of one code side by side.</summary>
/// <param name="Columns">The heads of its columns, the segment first.</param>
/// <param name="Rows">Its rows, in route order.</param>
public sealed record ReadingsMap(IReadOnlyList<string> Columns, IReadOnlyList<MapRow> Rows) : ReportBlock;

/// <summary>A segment in a <see cref="ReadingsMap"/>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cells">A cell a run.</param>
public sealed record MapRow(string Name, IReadOnlyList<MapCell> Cells);

/// <summary>What was read on a segment in a run.</summary>
/// <param name="Levels">As it was typed; empty: not read.</param>
/// <param name="LevelDb">Its level, dB(A); null: not read, or left out.</param>
/// <param name="Mark">What else is known of it, in a few letters.</param>
/// <param name="IsOut">Whether it is left out of the clean result.</param>
/// <param name="Heat">How far it lies from the mean of its segment.</param>
public sealed record MapCell(string Levels, double? LevelDb, string Mark, bool IsOut, MapHeat Heat)
{
    /// <summary>The text of the cell where nothing can be struck through or shaded.</summary>
    public string Words => string.Join(' ', new[] { Levels, Mark }.Where(part => part.Length > 0));
}

/// <summary>
/// How far a reading lies from the mean of its segment; own rule: 1 dB is about what can just be heard, 2 dB is plain (common practice, no
/// source).
/// </summary>
public enum MapHeat
{
    /// <summary>Less than 1 dB from it, or not counted.</summary>
    Near,

    /// <summary>1 dB or more above.</summary>
    Above,

    /// <summary>2 dB or more above.</summary>
    FarAbove,

    /// <summary>1 dB or more below.</summary>
    Below,

    /// <summary>2 dB or more below.</summary>
    FarBelow,
}
