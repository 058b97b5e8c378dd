using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>A word that one line of a study's verdict came out as.</summary>
/// <param name="Line">The line.</param>
/// <param name="Word">The word.</param>
public sealed record ArchivedWord(VerdictLineKind Line, string Word);

/// <summary>How often readings were flagged while one person drove.</summary>
/// <param name="Driver">Who drove; empty: not given.</param>
/// <param name="Cause">What spoilt them; null: not flagged.</param>
/// <param name="Readings">How many readings.</param>
public sealed record ArchivedFlags(string Driver, SpoiltCause? Cause, int Readings);

/// <summary>How far the meter drifted over a session, and how warm it was.</summary>
/// <param name="DriftDb">After minus before, dB.</param>
/// <param name="AirC">Mean of the air temperatures noted between the two checks, degC; null: none was.</param>
public sealed record ArchivedDrift(double DriftDb, double? AirC);

/// <summary>
/// What an archive keeps of a finished study for the questions of a test department. Which code was louder is not in it, nor what a code
/// was.
/// </summary>
/// <param name="Car">The car, as the crew wrote it; null: not told.</param>
/// <param name="Meter">The sound level meter, likewise.</param>
/// <param name="Segments">What each segment gave.</param>
/// <param name="Words">The words of its verdicts.</param>
/// <param name="Flags">Readings by who drove and what spoilt them.</param>
/// <param name="Drifts">The meter's drift by session.</param>
public sealed record ArchivedDetails(
    string? Car,
    string? Meter,
    ImmutableArray<ArchivedSegment> Segments,
    ImmutableArray<ArchivedWord> Words,
    ImmutableArray<ArchivedFlags> Flags,
    ImmutableArray<ArchivedDrift> Drifts
)
{
    /// <summary>Nothing: what is kept of a study that is not finished.</summary>
    public static ArchivedDetails None { get; } = new(null, null, [], [], [], []);

    /// <summary>What is kept of a finished study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="key">The opened key.</param>
    public static ArchivedDetails Of(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        return new ArchivedDetails(
            study.Plan?.Facts.Car,
            study.Plan?.Facts.Meter,
            [.. ArchivedSegment.Of(study)],
            [.. WordsOf(study, key)],
            [.. FlagsIn(study)],
            [
                .. study
                    .Sessions.Where(session => session.DriftDb is not null)
                    .Select(session => new ArchivedDrift(session.DriftDb!.Value, AirIn(study, session))),
            ]
        );
    }

    private static IEnumerable<ArchivedWord> WordsOf(Study study, OpenedKey? key)
    {
        ComparisonTerms terms = StudyTerms.Of(study);
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), terms);
        return StudyVerdicts
            .Of(study, comparison, EarFindings.Of(study, terms), key, RingFinding.Of(study))
            .Select(line => new ArchivedWord(line.Line, line.Word));
    }

    private static IEnumerable<ArchivedFlags> FlagsIn(Study study) =>
        study
            .Runs.SelectMany(run => run.Readings.Select(reading => (Driver: run.Driver ?? "", reading.Spoilt?.Cause)))
            .GroupBy(one => one)
            .OrderBy(found => found.Key.Driver, StringComparer.Ordinal)
            .ThenBy(found => found.Key.Cause)
            .Select(found => new ArchivedFlags(found.Key.Driver, found.Key.Cause, found.Count()));

    private static double? AirIn(Study study, Session session)
    {
        double[] air =
        [
            .. study
                .Weather.Where(one =>
                    one.Air is not null && one.Mark.At >= session.Before?.Mark.At && one.Mark.At <= session.After?.Mark.At
                )
                .Select(one => one.Air!.Value.Celsius),
        ];
        return air.Length == 0 ? null : air.Average();
    }
}

/// <summary>What one segment gave in one study: how often it could be read, and how well its readings repeated.</summary>
/// <param name="Number">Place in the route, from 1.</param>
/// <param name="Segment">The crew's name of it.</param>
/// <param name="Kind">Kind of surface.</param>
/// <param name="Seconds">How long a run stays on it, s.</param>
/// <param name="Taken">Readings taken.</param>
/// <param name="Counted">Of these, readings that count.</param>
/// <param name="Missed">Passages without a reading, in runs that have ended.</param>
/// <param name="Nu">Degrees of freedom of <paramref name="SdDb"/>.</param>
/// <param name="SdDb">Standard deviation of a reading on it, what a whole run was off taken away, dB; null without degrees of
/// freedom.</param>
public sealed record ArchivedSegment(
    int Number,
    string Segment,
    string Kind,
    double Seconds,
    int Taken,
    int Counted,
    int Missed,
    double Nu,
    double? SdDb
)
{
    /// <summary>
    /// What the segments of a study gave. A reading's residual: its distance from the mean of its code on the segment, less the mean of
    /// these distances over its run and class. Degrees of freedom: of the codes' means, less the share that the runs' means take; exact
    /// where every run read every segment of the class once (two-way layout without interaction, common practice, no source), near to it
    /// elsewhere.
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
                nu > 0 ? Math.Sqrt(own.Sum(one => one.Residual * one.Residual) / nu) : null
            );
        });
    }

    private static ILookup<string, (double Residual, double Nu)> Residuals(MeasuredDay day)
    {
        MeasuredLevel[] counted = [.. day.Levels.Where(level => !level.Spoilt)];
        Dictionary<MeasureClass, int> segments = counted
            .GroupBy(level => level.Class)
            .ToDictionary(all => all.Key, all => all.Select(level => level.Segment).Distinct().Count());
        var about = counted
            .GroupBy(level => (level.Code, level.Segment))
            .SelectMany(cell =>
                cell.Select(level => (Level: level, Off: level.LevelDb - cell.Average(one => one.LevelDb), Readings: cell.Count()))
            )
            .ToArray();
        return about
            .GroupBy(one => (one.Level.Run, one.Level.Class))
            .SelectMany(run =>
                run.Select(one =>
                    (
                        one.Level.Segment,
                        Residual: one.Off - run.Average(other => other.Off),
                        Nu: (one.Readings - 1.0) / one.Readings * (1 - (1.0 / segments[run.Key.Class]))
                    )
                )
            )
            .ToLookup(one => one.Segment, one => (one.Residual, one.Nu));
    }
}
