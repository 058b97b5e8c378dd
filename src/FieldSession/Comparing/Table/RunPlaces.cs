using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>When and in which company a run was driven, as the run model sees it.</summary>
/// <param name="Minutes">From the first run's start to its middle; null: not known.</param>
/// <param name="Car">Its car; null: there is one car.</param>
/// <param name="Slot">Runs driven side by side share it; null: it was driven alone.</param>
/// <param name="Session">Its session; sessions of cars that drove side by side are one. Null: there is one session.</param>
internal sealed record RunPlace(double? Minutes, string? Car, string? Slot, string? Session);

/// <summary>
/// Finds which runs of several laptops were driven side by side. Two runs of different strands are, if they overlap for more than half of
/// the shorter one; where the times are those of typing and not of driving, the first run of each named car, the second of each, and
/// so on. Own rule: clocks of two laptops differ by less than half a run.
/// </summary>
internal static class RunPlaces
{
    /// <summary>The places of runs, in their order.</summary>
    public static RunPlace[] Of(Study study, Run[] runs)
    {
        string?[] strands = [.. runs.Select(run => run.Started.Strand).Distinct()];
        return strands.Length < 2 ? Alone(study, runs) : OfSeveral(study, runs, strands);
    }

    private static RunPlace[] Alone(Study study, Run[] runs)
    {
        double?[] minutes = RunTimes.Minutes(runs);
        return [.. runs.Select((run, i) => new RunPlace(minutes[i], run.Car, null, study.Sessions.Count > 1 ? $"{run.Session}" : null))];
    }

    private static RunPlace[] OfSeveral(Study study, Run[] runs, string?[] strands)
    {
        bool isTimed = strands.All(strand => RunTimes.AreTold([.. runs.Where(run => run.Started.Strand == strand)]));
        int[] slots = isTimed ? Overlapping(runs) : ByTurn(study, runs);
        bool isSideBySide = slots.Distinct().Count() < slots.Length;
        Dictionary<int, int> session = Joined(runs, slots);
        bool severalSessions = runs.Select(run => session[run.Session]).Distinct().Count() > 1;
        DateTimeOffset start = runs.Min(run => run.Started.At);
        return
        [
            .. runs.Select(
                (run, i) =>
                    new RunPlace(
                        isTimed ? RunTimes.MiddleOf(run, start) : null,
                        run.Car ?? (isSideBySide ? $"laptop {Array.IndexOf(strands, run.Started.Strand) + 1}" : null),
                        slots.Count(slot => slot == slots[i]) > 1 ? $"{slots[i] + 1}" : null,
                        severalSessions ? $"{session[run.Session]}" : null
                    )
            ),
        ];
    }

    private static int[] Overlapping(Run[] runs)
    {
        int[] slots = new int[runs.Length];
        for (int i = 0; i < runs.Length; i++)
        {
            slots[i] = i;
            for (int earlier = 0; earlier < i && slots[i] == i; earlier++)
            {
                bool isOthers = !Enumerable
                    .Range(0, i)
                    .Any(k => slots[k] == slots[earlier] && runs[k].Started.Strand == runs[i].Started.Strand);
                slots[i] = isOthers && Overlap(runs[earlier], runs[i]) ? slots[earlier] : i;
            }
        }

        return slots;
    }

    private static bool Overlap(Run one, Run other)
    {
        (DateTimeOffset oneEnd, DateTimeOffset otherEnd) = (RunTimes.EndOf(one), RunTimes.EndOf(other));
        DateTimeOffset from = one.Started.At > other.Started.At ? one.Started.At : other.Started.At;
        DateTimeOffset to = oneEnd < otherEnd ? oneEnd : otherEnd;
        TimeSpan shorter = oneEnd - one.Started.At < otherEnd - other.Started.At ? oneEnd - one.Started.At : otherEnd - other.Started.At;
        return (to - from) * 2 > shorter;
    }

    // a run that a decision leaves out, such as one on the wrong car, takes no turn
    private static int[] ByTurn(Study study, Run[] all)
    {
        int[] slots = [.. Enumerable.Range(0, all.Length)];
        int[] counted = [.. slots.Where(i => !StudyReadings.IsLeftOut(study, ConflictKind.SameRun, all[i].Started))];
        int[] turns = TurnsOf([.. counted.Select(i => all[i])]);
        for (int i = 0; i < counted.Length; i++)
        {
            slots[counted[i]] = counted[turns[i]];
        }

        return slots;
    }

    private static int[] TurnsOf(Run[] runs)
    {
        string?[] carOfStrand =
        [
            .. runs.GroupBy(run => run.Started.Strand)
                .Select(own => own.Select(run => run.Car).Distinct().Count() == 1 ? own.First().Car?.ToUpperInvariant() : null),
        ];
        bool eachItsCar = carOfStrand.All(car => car is not null) && carOfStrand.Distinct().Count() == carOfStrand.Length;
        if (!eachItsCar)
        {
            return [.. Enumerable.Range(0, runs.Length)];
        }

        Dictionary<int, int> firstOfTurn = [];
        return
        [
            .. runs.Select(
                (run, i) =>
                {
                    int turn = runs.Take(i).Count(earlier => earlier.Started.Strand == run.Started.Strand);
                    return firstOfTurn.TryAdd(turn, i) ? i : firstOfTurn[turn];
                }
            ),
        ];
    }

    // Each car has its meter checked in a session of its own; what they drove side by side is one session to the comparison.
    private static Dictionary<int, int> Joined(Run[] runs, int[] slots)
    {
        Dictionary<int, int> sessions = runs.Select(run => run.Session).Distinct().ToDictionary(number => number);
        foreach (
            IGrouping<int, int> slot in runs.Select((run, i) => (run.Session, Slot: slots[i]))
                .GroupBy(x => x.Slot, x => sessions[x.Session])
        )
        {
            int[] together = [.. slot.Select(number => sessions[number]).Distinct()];
            foreach (int number in sessions.Keys.Where(key => together.Contains(sessions[key])).ToArray())
            {
                sessions[number] = together.Min();
            }
        }

        return sessions;
    }
}

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
    public static bool AreTold(Run[] runs) =>
        runs.Length == 1 ? (EndOf(runs[0]) - runs[0].Started.At).TotalMinutes >= ShortestRunMinutes : Minutes(runs)[0] is not null;
}
