using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>What one segment gave in one study: how often it could be read, and how well its readings repeated.</summary>
/// <param name="Number">Place in the route, from 1.</param>
/// <param name="Segment">The crew's name of it.</param>
/// <param name="Kind">Kind of surface.</param>
/// <param name="Seconds">How long a run stays on it, s.</param>
/// <param name="Taken">Readings taken.</param>
/// <param name="Counted">Of these, readings that count.</param>
/// <param name="Missed">Passages without a reading, in runs that have ended.</param>
/// <param name="Nu">Degrees of freedom of <paramref name="SdDb"/>.</param>
/// <param name="SdDb">Standard deviation of a reading on it, what a whole run was off taken away, dB; null without degrees of freedom.</param>
public sealed record ArchivedSegment(int Number, string Segment, string Kind, double Seconds, int Taken, int Counted, int Missed, double Nu, double? SdDb)
{
    /// <summary>
    /// What the segments of a study gave. A reading's residual: its distance from the mean of its code on the segment, less the mean of these distances
    /// over its run and class. Degrees of freedom: of the codes' means, less the share that the runs' means take; exact where every run read every
    /// segment of the class once (two-way layout without interaction, common practice, no source), near to it elsewhere.
    /// </summary>
    public static IEnumerable<ArchivedSegment> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        MeasuredDay day = StudyReadings.Of(study);
        ILookup<string, (double Residual, double Nu)> residuals = Residuals(day);
        return (study.Plan?.Route ?? []).Select(segment =>
        {
            MeasuredLevel[] taken = [.. day.Levels.Where(level => level.Segment == segment.Name)];
            (double Residual, double Nu)[] own = [.. residuals[segment.Name]];
            double nu = own.Sum(one => one.Nu);
            return new ArchivedSegment(
                segment.Number,
                segment.Name,
                segment.Kind.Word,
                segment.Seconds,
                taken.Length,
                taken.Count(level => !level.Spoilt),
                study.Runs.Count(run => !run.IsOn && run.ReadingsOn(segment.Number).Length == 0),
                nu,
                nu > 0 ? Math.Sqrt(own.Sum(one => one.Residual * one.Residual) / nu) : null);
        });
    }

    private static ILookup<string, (double Residual, double Nu)> Residuals(MeasuredDay day)
    {
        MeasuredLevel[] counted = [.. day.Levels.Where(level => !level.Spoilt)];
        Dictionary<MeasureClass, int> segments = counted.GroupBy(level => level.Class).ToDictionary(all => all.Key, all => all.Select(level => level.Segment).Distinct().Count());
        var about = counted.GroupBy(level => (level.Code, level.Segment))
            .SelectMany(cell => cell.Select(level => (Level: level, Off: level.LevelDb - cell.Average(one => one.LevelDb), Readings: cell.Count()))).ToArray();
        return about.GroupBy(one => (one.Level.Run, one.Level.Class))
            .SelectMany(run => run.Select(one => (
                one.Level.Segment,
                Residual: one.Off - run.Average(other => other.Off),
                Nu: (one.Readings - 1.0) / one.Readings * (1 - (1.0 / segments[run.Key.Class])))))
            .ToLookup(one => one.Segment, one => (one.Residual, one.Nu));
    }
}
