namespace FieldSession.Reporting;

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

/// <summary>How far a reading lies from the mean of its segment; own rule: 1 dB is about what can just be heard, 2 dB is plain (common practice, no source).</summary>
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
