using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Segments of a run that follow each other and were all read: what a slip by one has moved together.</summary>
/// <param name="From">First segment.</param>
/// <param name="To">Last segment.</param>
public readonly record struct Stretch(int From, int To)
{
    /// <summary>The stretch that a step pushes into the next gap: from the marked segment as far as readings follow in that direction.</summary>
    /// <param name="run">The run.</param>
    /// <param name="segments">How many segments the route has.</param>
    /// <param name="marked">The marked segment.</param>
    /// <param name="by">How many segments further on (above 0) or back (below 0).</param>
    /// <returns>The stretch; null: the marked segment was not read, or there is no gap so long in that direction.</returns>
    public static Stretch? Into(Run run, int segments, int marked, int by)
    {
        ArgumentNullException.ThrowIfNull(run);
        HashSet<int> read = [.. run.Readings.Select(reading => reading.Segment)];
        int step = Math.Sign(by);
        int end = marked;
        while (read.Contains(end + step))
        {
            end += step;
        }

        bool hasGap = end + by >= 1 && end + by <= segments && Enumerable.Range(1, Math.Abs(by)).All(far => !read.Contains(end + (far * step)));
        return read.Contains(marked) && hasGap ? new Stretch(Math.Min(marked, end), Math.Max(marked, end)) : null;
    }

    /// <summary>The last segment of the stretch that begins at a segment; the segment itself where the run has no reading there.</summary>
    public static int EndFrom(Study study, int run, int segment)
    {
        ArgumentNullException.ThrowIfNull(study);
        HashSet<int> read = run <= study.Runs.Count ? [.. study.Runs[run - 1].Readings.Select(reading => reading.Segment)] : [];
        int first = read.Where(s => s >= segment).DefaultIfEmpty(segment).Min();
        int end = first;
        while (read.Contains(end + 1))
        {
            end++;
        }

        return end;
    }

    /// <summary>Whether a segment lies in it.</summary>
    public bool Holds(int segment) => segment >= From && segment <= To;
}
