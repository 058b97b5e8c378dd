using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>One kind of extra reading, compared by the method of the main readings but apart from them.</summary>
/// <param name="Name">What it is, such as "dB(C)".</param>
/// <param name="Readings">How many were noted.</param>
/// <param name="Comparison">What they say.</param>
public sealed record ExtraFinding(string Name, int Readings, Comparison Comparison)
{
    private static (string Name, bool IsOfRing, Func<Extras, double?> Part)[] Parts =>
    [
        ("dB(C)", false, extras => extras.CDb),
        (EarRemarkWords.LevelAt200Hz, true, extras => extras.Band200Db),
        (EarRemarkWords.LevelAt250Hz, true, extras => extras.Band250Db),
    ];

    /// <summary>
    /// The kinds of which anything was noted. A spoilt reading's extras are spoilt with it. Bands that hold the ring are told once it is uncovered: by code
    /// they would tell what is behind one (<see cref="RingCover"/>).
    /// </summary>
    /// <param name="study">The study.</param>
    /// <param name="terms">How the day is compared.</param>
    public static IEnumerable<ExtraFinding> Of(Study study, ComparisonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        MeasuredDay day = StudyReadings.Of(study);
        Reading[] readings = [.. study.Runs.SelectMany(StudyReadings.InRouteOrder)];
        foreach ((string name, _, Func<Extras, double?> part) in Parts.Where(part => !part.IsOfRing || RingCover.IsOpen(study)))
        {
            // The day's levels are in the order of the runs and their readings.
            MeasuredLevel[] levels =
            [
                .. day.Levels.Zip(readings, (level, reading) => (Level: level, Db: reading.Extras is { } extras ? part(extras) : null))
                    .Where(pair => pair.Db is not null)
                    .Select(pair => pair.Level with { LowDb = pair.Db!.Value, HighDb = pair.Db!.Value }),
            ];
            if (levels.Length > 0)
            {
                yield return new ExtraFinding(name, levels.Length, BlindComparison.Of(day with { Levels = levels, Missed = 0 }, terms));
            }
        }
    }
}
