using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession;

/// <summary>What a line did, flat, for programs that question a study without telling its journal: told when the line was stored, by all lines there were then.</summary>
/// <param name="Run">Run that it changed; null: none.</param>
/// <param name="Code">Code of that run; null: none.</param>
/// <param name="Segment">Segment whose reading it took, flagged, corrected or missed; null: none.</param>
/// <param name="LowDb">Low end of that reading after the line, dB; null: no reading.</param>
/// <param name="HighDb">High end of it, or its one value, dB; null: no reading.</param>
/// <param name="Cause">What spoilt that reading, as known after the line; null: nothing.</param>
public sealed record LineFact(int? Run, string? Code, int? Segment, double? LowDb, double? HighDb, string? Cause)
{
    /// <summary>A line that changed no run, or could not be told.</summary>
    public static LineFact None { get; } = new(null, null, null, null, null, null);

    /// <summary>What each line did, in the order of the lines.</summary>
    /// <param name="lines">All lines of the study so far.</param>
    public static IReadOnlyList<LineFact> Of(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Dictionary<string, LineFact> told = [];
        foreach (Told one in Telling.Of(lines, isTolerant: true))
        {
            told[one.Line.Hash] = Of(one);
        }

        return [.. lines.Select(line => told.GetValueOrDefault(line.Hash, None))];
    }

    private static LineFact Of(Told told)
    {
        if (told.After.Runs.FindLast(run => !ReferenceEquals(run, told.Before.Runs.ElementAtOrDefault(run.Number - 1))) is not { } run)
        {
            return None;
        }

        Run? before = told.Before.Runs.ElementAtOrDefault(run.Number - 1);
        Passage? passage = run.Passages.Where((one, place) => !ReferenceEquals(one, before?.Passages.ElementAtOrDefault(place))).LastOrDefault();
        Reading? reading = passage as Reading;
        return new LineFact(run.Number, run.Code.Digits, passage?.Segment, reading?.Levels.LowDb, reading?.Levels.HighDb, reading?.Spoilt?.Cause.Word());
    }
}
