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

/// <summary>What an archive keeps of a finished study for the questions of a test department. Which code was louder is not in it, nor what a code was.</summary>
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
    ImmutableArray<ArchivedDrift> Drifts)
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
            [.. study.Sessions.Where(session => session.DriftDb is not null).Select(session => new ArchivedDrift(session.DriftDb!.Value, AirIn(study, session)))]);
    }

    private static IEnumerable<ArchivedWord> WordsOf(Study study, OpenedKey? key)
    {
        ComparisonTerms terms = StudyTerms.Of(study);
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), terms);
        return StudyVerdicts.Of(study, comparison, EarFindings.Of(study, terms), key, RingFinding.Of(study)).Select(line => new ArchivedWord(line.Line, line.Word));
    }

    private static IEnumerable<ArchivedFlags> FlagsIn(Study study) => study.Runs
        .SelectMany(run => run.Readings.Select(reading => (Driver: run.Driver ?? "", reading.Spoilt?.Cause)))
        .GroupBy(one => one)
        .OrderBy(found => found.Key.Driver, StringComparer.Ordinal).ThenBy(found => found.Key.Cause)
        .Select(found => new ArchivedFlags(found.Key.Driver, found.Key.Cause, found.Count()));

    private static double? AirIn(Study study, Session session)
    {
        double[] air = [.. study.Weather.Where(one => one.Air is not null && one.Mark.At >= session.Before?.Mark.At && one.Mark.At <= session.After?.Mark.At).Select(one => one.Air!.Value.Celsius)];
        return air.Length == 0 ? null : air.Average();
    }
}
