using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>When runs were driven, as far as the times of their lines tell it.</summary>
internal static class RunTimes
{
    /// <summary>
    /// Two runs whose middles lie closer than this were not driven at the times of their lines, but typed in afterwards.
    /// Minutes; own rule: no loop of a road test is driven in less.
    /// </summary>
    public const double ShortestRunMinutes = 2;

    /// <summary>For each run the minutes from the first one's start to its middle; null where they are not known.</summary>
    public static double?[] Minutes(Run[] runs)
    {
        if (!InOrder(runs))
        {
            return new double?[runs.Length];
        }

        double?[] middles = [.. runs.Select(run => (double?)MiddleOf(run, runs[0].Started.At))];
        for (int i = 1; i < middles.Length; i++)
        {
            if (middles[i] - middles[i - 1] < ShortestRunMinutes)
            {
                return new double?[runs.Length];
            }
        }

        return middles;
    }

    // The journal says what came first. Times that say otherwise are those of a clock that was set back.
    private static bool InOrder(Run[] runs)
    {
        DateTimeOffset[] times = [.. runs.SelectMany(run => (DateTimeOffset[])[run.Started.At, EndOf(run)])];
        return times.Zip(times.Skip(1)).All(pair => pair.First <= pair.Second);
    }

    /// <summary>Minutes from a start to the middle of a run.</summary>
    public static double MiddleOf(Run run, DateTimeOffset start)
    {
        DateTimeOffset end = EndOf(run);
        return ((run.Started.At - start).TotalMinutes + (end - start).TotalMinutes) / 2;
    }

    /// <summary>When a run ended, or was read last.</summary>
    public static DateTimeOffset EndOf(Run run) => run.Ended?.At ?? (run.Passages.IsEmpty ? run.Started.At : run.Passages[^1].Mark.At);

    /// <summary>Whether the times of runs are those of driving, even of a single one.</summary>
    public static bool AreTold(Run[] runs) => runs.Length == 1
        ? (EndOf(runs[0]) - runs[0].Started.At).TotalMinutes >= ShortestRunMinutes
        : Minutes(runs)[0] is not null;
}
