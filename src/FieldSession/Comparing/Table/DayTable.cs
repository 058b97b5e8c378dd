namespace FieldSession.Comparing;

/// <summary>A run as the run model sees it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Code">Place of its code in <see cref="DayTable.Codes"/>.</param>
/// <param name="Hours">Middle of the run, hours; without known times the place in the order (any unit, never shown).</param>
/// <param name="Car">Its car.</param>
/// <param name="Slot">Its slot.</param>
/// <param name="Session">Its session.</param>
internal sealed record DrivenRun(int Number, int Code, double Hours, string? Car, string? Slot, string? Session);

/// <summary>
/// The day's readings as one table, runs down and segments across: one level per run and segment (the mean of its readings), once without
/// and once with the spoilt ones; a gap is NaN inside this room. The grand mean is taken off, so that sums of squares keep their digits
/// (NIST StRD, data set AtmWtAg).
/// </summary>
internal sealed class DayTable
{
    private readonly HashSet<int> _replaced;

    private DayTable(MeasuredDay day)
    {
        MeasuredLevel[] firstOfRun = FirstOfRun(day.Levels);
        Codes = [.. firstOfRun.Select(level => level.Code).Distinct()];
        TimesKnown = firstOfRun.Length > 0 && firstOfRun.All(level => level.Minutes is not null);
        Runs =
        [
            .. firstOfRun.Select(
                (level, place) =>
                    new DrivenRun(
                        level.Run,
                        Array.IndexOf(Codes, level.Code),
                        TimesKnown ? level.Minutes!.Value / 60 : place,
                        level.Car,
                        level.Slot,
                        level.Session
                    )
            ),
        ];
        Segments = SegmentsIn(day);
        Valid = new double[Runs.Length * Segments.Length];
        All = new double[Valid.Length];
        _replaced = [.. day.Levels.Where(level => level.IsReplaced).Select(level => level.Run)];
        MeanDb = day.Levels.Count == 0 ? 0 : day.Levels.Average(level => level.LevelDb);
        Fill(day.Levels);
    }

    /// <summary>The codes in the order of first driving.</summary>
    public string[] Codes { get; }

    /// <summary>The runs in driven order.</summary>
    public DrivenRun[] Runs { get; }

    /// <summary>The segments in route order.</summary>
    public PlannedSegment[] Segments { get; }

    /// <summary>Whether every run has a time.</summary>
    public bool TimesKnown { get; }

    /// <summary>The mean of all levels, which the table is centred on, dB.</summary>
    public double MeanDb { get; }

    /// <summary>Levels from valid readings, row by row.</summary>
    public double[] Valid { get; }

    /// <summary>Levels from all readings, row by row.</summary>
    public double[] All { get; }

    /// <summary>Whether another run replaced the run with this number.</summary>
    public bool IsReplaced(int run) => _replaced.Contains(run);

    /// <summary>Lays the table.</summary>
    /// <exception cref="ArgumentException">A run with two codes, a segment with two classes, or a level that is not a number.</exception>
    public static DayTable Of(MeasuredDay day) => new(day);

    /// <summary>Whether a class takes in every segment there is.</summary>
    public bool IsAll(MeasureClass measureClass) => Array.TrueForAll(Segments, segment => segment.Class == measureClass);

    /// <summary>Whether a class (null: any) has spoilt readings that make a difference.</summary>
    public bool HasSpoilt(MeasureClass? measureClass)
    {
        foreach (int segment in SegmentsOf(measureClass))
        {
            for (int at = segment; at < Valid.Length; at += Segments.Length)
            {
                if (!Valid[at].Equals(All[at]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Places of the segments of a class; null: of all.</summary>
    public int[] SegmentsOf(MeasureClass? measureClass) =>
        [.. Enumerable.Range(0, Segments.Length).Where(s => measureClass is null || Segments[s].Class == measureClass)];

    private static MeasuredLevel[] FirstOfRun(IReadOnlyList<MeasuredLevel> levels)
    {
        Dictionary<int, MeasuredLevel> first = [];
        foreach (MeasuredLevel level in levels)
        {
            first.TryAdd(level.Run, level);
        }

        return [.. first.Values.OrderBy(level => level.Run)];
    }

    private static PlannedSegment[] SegmentsIn(MeasuredDay day)
    {
        List<PlannedSegment> segments = [.. (day.Planned ?? []).DistinctBy(segment => segment.Segment)];
        HashSet<string> known = [.. segments.Select(segment => segment.Segment)];
        foreach (MeasuredLevel level in day.Levels)
        {
            if (known.Add(level.Segment))
            {
                segments.Add(new PlannedSegment(level.Segment, level.Kind, level.Class));
            }
        }

        return [.. segments];
    }

    private void Fill(IReadOnlyList<MeasuredLevel> levels)
    {
        Dictionary<int, int> rowOf = Runs.Select((run, row) => (run.Number, row)).ToDictionary(x => x.Number, x => x.row);
        Dictionary<string, int> columnOf = Segments.Select((segment, s) => (segment.Segment, s)).ToDictionary(x => x.Segment, x => x.s);
        int[] validCount = new int[Valid.Length];
        int[] allCount = new int[Valid.Length];
        foreach (MeasuredLevel level in levels)
        {
            (int row, int column) = (rowOf[level.Run], columnOf[level.Segment]);
            Check(level, Codes[Runs[row].Code], Segments[column].Class);
            int at = row * Segments.Length + column;
            All[at] += level.LevelDb - MeanDb;
            allCount[at]++;
            Valid[at] += level.Spoilt ? 0 : level.LevelDb - MeanDb;
            validCount[at] += level.Spoilt ? 0 : 1;
        }

        for (int at = 0; at < Valid.Length; at++)
        {
            // 0 / 0 is NaN: the gap
            Valid[at] /= validCount[at];
            All[at] /= allCount[at];
        }
    }

    private static void Check(MeasuredLevel level, string code, MeasureClass measureClass)
    {
        if (level.Code != code)
        {
            throw new ArgumentException($"run {level.Run} has two codes, {code} and {level.Code}: give it one");
        }

        if (level.Class != measureClass)
        {
            throw new ArgumentException($"segment {level.Segment} is read both as a range and as a peak: give it one class");
        }

        if (!double.IsFinite(level.LevelDb))
        {
            throw new ArgumentException($"run {level.Run}, segment {level.Segment}: the level is not a number");
        }
    }
}
