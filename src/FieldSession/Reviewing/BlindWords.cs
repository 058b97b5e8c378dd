using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>How blind a study is, and what cannot be told before the reveal, in plain words.</summary>
public static class BlindWords
{
    /// <summary>What is in the title of a study whose codes were never sealed.</summary>
    public const string NotBlind = "NOT BLIND";

    /// <summary>"blind", or "NOT BLIND" where no codes were sealed.</summary>
    public static string Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Fittings.Count > 0 ? "blind" : NotBlind;
    }

    /// <summary>Sentences for the blind summary; empty for a study of one sealed fitting.</summary>
    public static IEnumerable<string> Remarks(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Fittings.Count == 0)
        {
            yield return $"{NotBlind}: no codes were sealed; whoever drove may have known what was on the car.";
        }

        foreach (string line in ConflictWords.Of(study).Concat(SessionWords.Of(study)))
        {
            yield return line;
        }

        if (study.Fittings.Count > 1)
        {
            yield return $"{string.Join("; ", study.Fittings.Select((fitting, index) => Fitted(study, fitting, index + 1)))}.";
            yield return "Only the keys say which codes of different fittings are the same spec: until the reveal they are compared as "
                + "different codes, "
                + "and their difference may come from the specs or from what changed in between.";
        }
    }

    private static string Fitted(Study study, Fitting fitting, int number)
    {
        int[] runs = [.. study.Runs.Where(run => fitting.Codes.Contains(run.Code)).Select(run => run.Number)];
        string driven =
            runs.Length == 0 ? "not driven"
            : runs.Length == 1 ? $"run {runs[0]}"
            : $"runs {runs[0]} to {runs[^1]}";
        string codes = string.Join(", ", fitting.Codes.Select(code => code.Digits).Order(StringComparer.Ordinal));
        return $"Fitting {number}: codes {codes}, {driven}";
    }
}

/// <summary>What laptops did without knowing of each other, and how it was settled, in plain words. No level is in them.</summary>
public static class ConflictWords
{
    /// <summary>A sentence a conflict, in order; empty: there is none.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Conflicts.Select((conflict, index) => Line(conflict, index + 1));
    }

    /// <summary>The first conflict that nobody has settled, with what to type, and how many more there are; null: there is none.</summary>
    public static string? FirstOpen(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        int more = study.Unsettled.Count() - 1;
        int first = study.Conflicts.FindIndex(conflict => conflict.Settlement is null);
        return first < 0
            ? null
            : $"laptops in conflict: {study.Conflicts[first].Words}; 'settle {first + 1} first because WHY', or second, or "
                + $"both{(more == 0 ? "" : $"; {more} more, 'review' lists them")}";
    }

    private static string Line(Conflict conflict, int number) =>
        conflict.Settlement is { } settlement
            ? $"Conflict {number}: {conflict.Words}; settled: {Side(settlement.Counts)}, because {settlement.Reason}."
            : $"Conflict {number}: {conflict.Words}; NOT SETTLED: both count until 'settle {number} first because WHY' (or "
                + "second, or both).";

    private static string Side(ConflictSide side) =>
        side switch
        {
            ConflictSide.First => "the first counts",
            ConflictSide.Second => "the second counts",
            _ => "both count",
        };
}

/// <summary>
/// What differs between the sessions of a study, be they of one day or of several, before it is taken out by the comparison.
/// </summary>
public static class SessionWords
{
    /// <summary>A sentence a session, and one on what the comparison makes of it; empty where one session was driven.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ILookup<int, MeasuredLevel> levels = StudyReadings.Of(study).Levels.ToLookup(level => level.Run);
        // as the comparison sees them: what cars drove side by side is one session, though each had its own meter checked
        IGrouping<string, Run>[] sessions =
        [
            .. study.Runs.Where(run => levels[run.Number].Any()).GroupBy(run => levels[run.Number].First().Session ?? ""),
        ];
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
        double[] air =
        [
            .. study
                .Weather.Where(weather => weather.Mark.At.UtcDateTime.Date == session.First().Started.At.UtcDateTime.Date)
                .Select(weather => weather.Air?.Celsius)
                .OfType<double>(),
        ];
        string warmth = air.Length == 0 ? "" : $"; air that day {air.Min():0.#} to {air.Max():0.#} degC";
        string drift = study.Sessions[session.First().Session - 1].DriftDb is { } db
            ? $"; meter drift {db:+0.0#;-0.0#;0.0} dB"
            : "; calibration not closed";
        string shift = Shift(study, session, levels, first) is { } more
            ? $"; the reference {more:+0.0;-0.0;0.0} dB against its first session"
            : "";
        return $"Session {session.Key}, "
            + $"{session.First().Started.At.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}: "
            + $"{session.Count()} runs on {string.Join(", ", codes)}{warmth}{drift}{shift}.";
    }

    // over the segments that the reference was read on in both sessions
    private static double? Shift(Study study, IGrouping<string, Run> session, ILookup<int, MeasuredLevel> levels, IEnumerable<Run> first)
    {
        Dictionary<string, double> Means(IEnumerable<Run> runs) =>
            runs.Where(run => run.Code == study.ReferenceCode)
                .SelectMany(run => levels[run.Number].Where(level => !level.Spoilt))
                .GroupBy(level => level.Segment)
                .ToDictionary(of => of.Key, of => of.Average(level => level.LevelDb));
        (Dictionary<string, double> then, Dictionary<string, double> now) = (Means(first), Means(session));
        double[] shifts = [.. now.Where(one => then.ContainsKey(one.Key)).Select(one => one.Value - then[one.Key])];
        return shifts.Length == 0 || session.First() == first.First() ? null : shifts.Average();
    }
}
