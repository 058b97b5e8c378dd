using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>How well runs repeated on an earlier day of the archive, over one class of segments.</summary>
/// <param name="Day">The study of that day.</param>
/// <param name="Group">"all", "steady", "impact", or "ring" for the ring band of recordings.</param>
/// <param name="NuRun">Degrees of freedom of <paramref name="SRunDb"/>.</param>
/// <param name="SRunDb">Run-to-run standard deviation of the run means, dB; null without degrees of freedom.</param>
/// <param name="Kbar">Share of the reading variance in a run mean.</param>
/// <param name="NuE">Degrees of freedom of <paramref name="SEDb"/>.</param>
/// <param name="SEDb">Standard deviation of a reading, dB; null without degrees of freedom.</param>
/// <param name="Study">Hash of that study's first line, which tells it from others of its name; null: not told.</param>
public sealed record EarlierScatter(
    string Day,
    string Group,
    double NuRun,
    double? SRunDb,
    double Kbar,
    double NuE,
    double? SEDb,
    string? Study = null
)
{
    /// <summary>Word of the ring band in recordings.</summary>
    public const string Ring = "ring";

    /// <summary>How many days some lines are of: by study, and by name where the study is not told.</summary>
    public static int DaysIn(IEnumerable<EarlierScatter> lines) => lines.Select(line => line.Study ?? line.Day).Distinct().Count();
}

/// <summary>What a study takes from its crew's archive; fixed before run 1.</summary>
/// <param name="From">The archive's folder, as it was named.</param>
/// <param name="Lines">The repeatability of its days.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record TakenArchive(string From, ImmutableList<EarlierScatter> Lines, LineMark Mark)
{
    /// <summary>How many days it holds.</summary>
    public int Days => EarlierScatter.DaysIn(Lines);
}
