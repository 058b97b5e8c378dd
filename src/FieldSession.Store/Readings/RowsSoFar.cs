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
/// Holds every row against what earlier rows said about the same run and the same segment: one code, time, car, slot and session a run; one kind
/// and class a segment. The strings kept here are the ones that all readings share, so a million rows hold each name once.
/// </summary>
/// <param name="sheet">The sheet, for telling problems.</param>
internal sealed class RowsSoFar(CsvSheet sheet)
{
    private readonly Dictionary<int, RunSoFar> runs = [];
    private readonly Dictionary<string, SegmentSoFar> segments = new(StringComparer.Ordinal);
    private readonly HashSet<string> codes = new(StringComparer.Ordinal);
    private readonly List<PlannedSegment> inOrder = [];

    /// <summary>The segments in the order of their first row.</summary>
    public IReadOnlyList<PlannedSegment> Segments => inOrder;

    /// <summary>The run a row belongs to, as its first row said it; null: the row says something else.</summary>
    public RunSoFar? Run(int number, RunSoFar said)
    {
        if (!runs.TryGetValue(number, out RunSoFar? first))
        {
            codes.Add(said.Code);
            return Fits(runs.Count + 1, CsvLimits.Runs, ReadingColumns.Run, "runs") & Fits(codes.Count, CsvLimits.Codes, ReadingColumns.Code, "codes")
                ? runs[number] = said
                : null;
        }

        bool same = Same(ReadingColumns.Code, number, first.Line, first.Code, said.Code);
        same &= Same(ReadingColumns.Minutes, number, first.Line, $"{first.Minutes}", $"{said.Minutes}", first.Minutes == said.Minutes);
        same &= Same(ReadingColumns.Car, number, first.Line, first.Car, said.Car);
        same &= Same(ReadingColumns.Slot, number, first.Line, first.Slot, said.Slot);
        same &= Same(ReadingColumns.Session, number, first.Line, first.Session, said.Session);
        return same ? first : null;
    }

    /// <summary>The segment a row belongs to, as its first row said it; null: the row says something else.</summary>
    public PlannedSegment? Segment(PlannedSegment said)
    {
        if (!segments.TryGetValue(said.Segment, out SegmentSoFar? first))
        {
            if (!Fits(segments.Count + 1, CsvLimits.Segments, ReadingColumns.Segment, "segments"))
            {
                return null;
            }

            segments.Add(said.Segment, new SegmentSoFar(sheet.Line, said));
            inOrder.Add(said);
            return said;
        }

        if (first.Segment.Kind != said.Kind)
        {
            sheet.Problem(ReadingColumns.Kind, said.Kind, $"segment {FileProblem.Shown(said.Segment)} has the kind {FileProblem.Shown(first.Segment.Kind)} on line {first.Line}", "one kind a segment");
            return null;
        }

        if (first.Segment.Class != said.Class)
        {
            sheet.Problem(ReadingColumns.Class, Word(said.Class), $"segment {FileProblem.Shown(said.Segment)} is {Word(first.Segment.Class)} on line {first.Line}", "one class a segment");
            return null;
        }

        return first.Segment;
    }

    private bool Fits(int count, int most, int column, string things)
    {
        if (count > most)
        {
            sheet.Problem(column, null, $"more than {most} {things}", $"is this the column of the {things}?");
        }

        return count <= most;
    }

    private static string Word(MeasureClass measureClass) => measureClass == MeasureClass.Impact ? "impact" : "steady";

    private bool Same(int column, int run, long line, string? first, string? said) =>
        Same(column, run, line, first, said, string.Equals(first, said, StringComparison.Ordinal));

    private bool Same(int column, int run, long line, string? first, string? said, bool same)
    {
        if (!same)
        {
            string before = string.IsNullOrEmpty(first) ? "nothing" : FileProblem.Shown(first);
            sheet.Problem(column, said ?? "", $"run {run} has {before} here on line {line}", $"one {ReadingColumns.Names[column]} a run");
        }

        return same;
    }
}
