using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What differs between the sessions of a study, be they of one day or of several, before it is taken out by the comparison.</summary>
public static class SessionWords
{
    /// <summary>A sentence a session, and one on what the comparison makes of it; empty where one session was driven.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ILookup<int, MeasuredLevel> levels = StudyReadings.Of(study).Levels.ToLookup(level => level.Run);
        // as the comparison sees them: what cars drove side by side is one session, though each had its own meter checked
        IGrouping<string, Run>[] sessions = [.. study.Runs.Where(run => levels[run.Number].Any()).GroupBy(run => levels[run.Number].First().Session ?? "")];
        if (sessions.Length < 2)
        {
            yield break;
        }

        foreach (IGrouping<string, Run> session in sessions)
        {
            yield return Line(study, session, levels, sessions[0]);
        }

        yield return "What makes a whole session louder or quieter on every code is taken out: each session has a column in the run model. "
            + "A code driven in one session only is compared through codes driven in several.";
    }

    private static string Line(Study study, IGrouping<string, Run> session, ILookup<int, MeasuredLevel> levels, IEnumerable<Run> first)
    {
        string[] codes = [.. session.Select(run => run.Code.Digits).Distinct().Order(StringComparer.Ordinal)];
        double[] air = [.. study.Weather.Where(weather => weather.Mark.At.UtcDateTime.Date == session.First().Started.At.UtcDateTime.Date).Select(weather => weather.Air?.Celsius).OfType<double>()];
        string warmth = air.Length == 0 ? "" : $"; air that day {air.Min():0.#} to {air.Max():0.#} degC";
        string drift = study.Sessions[session.First().Session - 1].DriftDb is { } db ? $"; meter drift {db:+0.0#;-0.0#;0.0} dB" : "; calibration not closed";
        string shift = Shift(study, session, levels, first) is { } more
            ? $"; the reference {more:+0.0;-0.0;0.0} dB against its first session"
            : "";
        return $"Session {session.Key}, {session.First().Started.At.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}: {session.Count()} runs on {string.Join(", ", codes)}{warmth}{drift}{shift}.";
    }

    // over the segments that the reference was read on in both sessions
    private static double? Shift(Study study, IGrouping<string, Run> session, ILookup<int, MeasuredLevel> levels, IEnumerable<Run> first)
    {
        Dictionary<string, double> Means(IEnumerable<Run> runs) => runs.Where(run => run.Code == study.ReferenceCode).SelectMany(run => levels[run.Number].Where(level => !level.Spoilt))
            .GroupBy(level => level.Segment).ToDictionary(of => of.Key, of => of.Average(level => level.LevelDb));
        (Dictionary<string, double> then, Dictionary<string, double> now) = (Means(first), Means(session));
        double[] shifts = [.. now.Where(one => then.ContainsKey(one.Key)).Select(one => one.Value - then[one.Key])];
        return shifts.Length == 0 || session.First() == first.First() ? null : shifts.Average();
    }
}
