using FieldSession.Comparing;

namespace FieldSession.Store.Readings;

/// <summary>What the rows so far say about a run; every further row has to say the same.</summary>
/// <param name="Line">The line that said it first.</param>
/// <param name="Code">Its code.</param>
/// <param name="Minutes">Its time.</param>
/// <param name="Car">Its car.</param>
/// <param name="Slot">Its slot.</param>
/// <param name="Session">Its session.</param>
internal sealed record RunSoFar(long Line, string Code, double? Minutes, string? Car, string? Slot, string? Session);

/// <summary>What the rows so far say about a segment.</summary>
/// <param name="Line">The line that said it first.</param>
/// <param name="Segment">The segment.</param>
internal sealed record SegmentSoFar(long Line, PlannedSegment Segment);

/// <summary>
/// Holds every row against what earlier rows said about the same run and the same segment: one code, time, car, slot and session a run; one
/// kind and class a segment. The strings kept here are the ones that all readings share, so a million rows hold each name once.
/// </summary>
/// <param name="sheet">The sheet, for telling problems.</param>
internal sealed class RowsSoFar(CsvSheet sheet)
{
    private readonly Dictionary<int, RunSoFar> _runs = [];
    private readonly Dictionary<string, SegmentSoFar> _segments = new(StringComparer.Ordinal);
    private readonly HashSet<string> _codes = new(StringComparer.Ordinal);
    private readonly HashSet<string> _cars = new(StringComparer.Ordinal);
    private readonly HashSet<string> _sessions = new(StringComparer.Ordinal);
    private readonly List<PlannedSegment> _inOrder = [];

    /// <summary>The segments in the order of their first row.</summary>
    public IReadOnlyList<PlannedSegment> Segments => _inOrder;

    /// <summary>How many runs there are if some were driven side by side (same slot, or same time), else 0.</summary>
    public int RunsSideBySide
    {
        get
        {
            string?[] together =
            [
                .. _runs
                    .Values.Select(run =>
                        run.Slot is not null ? $"slot {run.Session} {run.Slot}"
                        : run.Minutes is null ? null
                        : $"{run.Session} {run.Minutes:R}"
                    )
                    .Where(slot => slot is not null),
            ];
            return together.Distinct().Count() < together.Length ? _runs.Count : 0;
        }
    }

    /// <summary>The run a row belongs to, as its first row said it; null: the row says something else.</summary>
    public RunSoFar? Run(int number, RunSoFar said)
    {
        if (!_runs.TryGetValue(number, out RunSoFar? first))
        {
            return HasRoomFor(said) ? _runs[number] = said : null;
        }

        bool same = Same(ReadingColumns.Code, number, first.Line, first.Code, said.Code);
        same &=
            first.Minutes == said.Minutes
            || Same(ReadingColumns.Minutes, number, first.Line, CsvNumbers.Text(first.Minutes), CsvNumbers.Text(said.Minutes));
        same &= Same(ReadingColumns.Car, number, first.Line, first.Car, said.Car);
        same &= Same(ReadingColumns.Slot, number, first.Line, first.Slot, said.Slot);
        same &= Same(ReadingColumns.Session, number, first.Line, first.Session, said.Session);
        return same ? first : null;
    }

    /// <summary>The segment a row belongs to, as its first row said it; null: the row says something else.</summary>
    public PlannedSegment? Segment(PlannedSegment said)
    {
        if (!_segments.TryGetValue(said.Segment, out SegmentSoFar? first))
        {
            if (!HasRoomFor(_segments.Count + 1))
            {
                return null;
            }

            _segments.Add(said.Segment, new SegmentSoFar(sheet.Line, said));
            _inOrder.Add(said);
            return said;
        }

        if (first.Segment.Kind != said.Kind)
        {
            sheet.Problem(
                ReadingColumns.Kind,
                said.Kind,
                ReadingsFileWords.KindDiffers(said, first.Segment.Kind, first.Line),
                ReadingsFileWords.OneKindASegment
            );
            return null;
        }

        if (first.Segment.Class != said.Class)
        {
            sheet.Problem(
                ReadingColumns.Class,
                Word(said.Class),
                ReadingsFileWords.ClassDiffers(said, Word(first.Segment.Class), first.Line),
                ReadingsFileWords.OneClassASegment
            );
            return null;
        }

        if (first.Segment.Seconds != said.Seconds)
        {
            sheet.Problem(
                ReadingColumns.Seconds,
                CsvNumbers.Text(said.Seconds),
                ReadingsFileWords.DurationDiffers(said, CsvNumbers.Text(first.Segment.Seconds), first.Line),
                ReadingsFileWords.OneDurationASegment
            );
            return null;
        }

        return first.Segment;
    }

    private bool HasRoomFor(RunSoFar run)
    {
        _codes.Add(run.Code);
        _cars.Add(run.Car ?? "");
        _sessions.Add(run.Session ?? "");
        return Fits(_runs.Count + 1, CsvLimits.Runs, ReadingColumns.Run, "runs")
                & Fits(_codes.Count, CsvLimits.Codes, ReadingColumns.Code, "codes")
                & Fits(_cars.Count, CsvLimits.Groups, ReadingColumns.Car, "cars")
                & Fits(_sessions.Count, CsvLimits.Groups, ReadingColumns.Session, "sessions")
            && HasRoom(_runs.Count + 1, _segments.Count);
    }

    private bool HasRoomFor(int segments) =>
        Fits(segments, CsvLimits.Segments, ReadingColumns.Segment, "segments") && HasRoom(_runs.Count, segments);

    private bool HasRoom(int runs, int segments)
    {
        (string Things, bool Fits)[] all =
        [
            (ReadingsFileWords.RunsTimesSegments, (long)runs * segments <= CsvLimits.Cells),
            (ReadingsFileWords.RunsTimesColumns, (long)runs * (_codes.Count + _cars.Count + _sessions.Count) <= CsvLimits.RunColumns),
            (ReadingsFileWords.CodesTimesSegments, (long)_codes.Count * segments <= CsvLimits.CodeSegments),
        ];
        foreach ((string things, _) in all.Where(limit => !limit.Fits))
        {
            sheet.Problem(ReadingColumns.Segment, null, $"more than {things}", ReadingsFileWords.SplitOrLookAtColumns);
        }

        return all.All(limit => limit.Fits);
    }

    private bool Fits(int count, int most, int column, string things)
    {
        if (count > most)
        {
            sheet.Problem(column, null, $"more than {most} {things}", ReadingsFileWords.IsThisTheColumn(things));
        }

        return count <= most;
    }

    private static string Word(MeasureClass measureClass) => measureClass == MeasureClass.Impact ? "impact" : "steady";

    private bool Same(int column, int run, long line, string? first, string? said)
    {
        bool same = string.Equals(first, said, StringComparison.Ordinal);
        if (!same)
        {
            string before = string.IsNullOrEmpty(first) ? "nothing" : FileProblem.Shown(first);
            sheet.Problem(column, said ?? "", ReadingsFileWords.RunDiffers(run, before, line), $"one {ReadingColumns.Names[column]} a run");
        }

        return same;
    }
}
