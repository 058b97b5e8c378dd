using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// The co-driver had slipped by some segments: what was typed on a stretch of a run belongs further on or further back. One recorded
/// act puts it right.
/// </summary>
/// <param name="Run">Number of the run.</param>
/// <param name="FromSegment">The first segment, as it was typed, that is wrong.</param>
/// <param name="By">How many segments further on (above 0) or back (below 0).</param>
/// <param name="ToSegment">The last segment that is wrong; null: all the rest of the run, as older programs wrote it.</param>
public sealed record RunShifted(int Run, int FromSegment, int By, int? ToSegment = null) : Entry
{
    private Stretch Stretch => new(FromSegment, ToSegment ?? int.MaxValue);

    private string Words =>
        ToSegment is { } last ? $"shift {Run}.{FromSegment}-{last} {By:+0;-0}" : $"shift {Run}.{FromSegment} {By:+0;-0}";

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => StopGate.ObjectionIn(study) ?? ObjectionToPlaces(study);

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Run = study.NumberOf(Run, study.Runs.Select(run => run.Started)) };
    }

    /// <inheritdoc/>
    public override bool IsAboutSomethingIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.HasRun(Run);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Run run = study.Runs[Run - 1];
        HashSet<int> taken = ToSegment is null ? [] : [.. Moving(run).Select(p => p.Segment + By)];
        ImmutableList<Passage> passages = run
            .Passages.RemoveAll(passage => passage is Missed && !Stretch.Holds(passage.Segment) && taken.Contains(passage.Segment))
            .ConvertAll(passage => study.Hand.Knows(passage.Mark) ? Moved(passage, study.Plan!) : passage);
        Run shifted = run with
        {
            Passages = passages,
            Furthest = passages.Select(p => p.Segment).DefaultIfEmpty().Max(),
            Shifts = run.Shifts.Add(mark),
        };
        return (study with { Runs = study.Runs.SetItem(Run - 1, shifted) }).Undoably(study, mark, Words);
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        string places = string.Join(", ", Moving(before.Runs[Run - 1]).Select(p => p.Segment + By));
        return new Echo(DrivingWords.RunShifted(Run, By, FromSegment, ToSegment, places));
    }

    private IEnumerable<Passage> Moving(Run run) => run.Passages.Where(passage => Stretch.Holds(passage.Segment));

    private Passage Moved(Passage passage, Plan plan)
    {
        int place = passage.Segment + By;
        // another laptop may have shifted the same run meanwhile: nothing leaves the route
        if (!Stretch.Holds(passage.Segment) || place < 1 || place > plan.Route.Count)
        {
            return passage;
        }

        return passage is Reading reading
            ? reading with
            {
                Segment = place,
                Doubt = ReadingDoubt.OfValue(reading.Levels, plan.Route[place - 1], plan.Limits),
                Confirmed = false,
            }
            : passage with
            {
                Segment = place,
            };
    }

    private Objection? ObjectionToPlaces(Study study)
    {
        const string Form = DrivingWords.ShiftForm;
        if (!study.HasRun(Run) || By == 0)
        {
            return new Objection(By == 0 ? DrivingWords.ShiftByChangesNothing : DrivingWords.ThereIsNoRun(Run), Form);
        }

        Run run = study.Runs[Run - 1];
        int[] moved = [.. Moving(run).Select(p => p.Segment + By)];
        if (moved.Length == 0)
        {
            return new Objection(DrivingWords.RunHasNothingFromSegment(Run, FromSegment), Form);
        }

        int last = study.Plan!.Route.Count;
        int? beyond = moved.Cast<int?>().FirstOrDefault(p => p < 1 || p > last);
        int? taken = run
            .Readings.Where(r => !Stretch.Holds(r.Segment))
            .Select(r => (int?)r.Segment)
            .FirstOrDefault(s => moved.Contains(s!.Value));
        return (beyond, taken) switch
        {
            ({ } outside, _) => new Objection(DrivingWords.SegmentIsBeyondRoute(outside, last), DrivingWords.ShiftShorterStretch),
            (_, { } occupied) => new Objection(DrivingWords.SegmentHasEntryAlready(occupied), DrivingWords.ShiftTowardsGap),
            _ => null,
        };
    }
}

/// <summary>Segments of a run that follow each other and were all read: what a slip by one has moved together.</summary>
/// <param name="From">First segment.</param>
/// <param name="To">Last segment.</param>
public readonly record struct Stretch(int From, int To)
{
    /// <summary>
    /// The stretch that a step pushes into the next gap: from the marked segment as far as readings follow in that direction.
    /// </summary>
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

        bool hasGap =
            end + by >= 1 && end + by <= segments && Enumerable.Range(1, Math.Abs(by)).All(far => !read.Contains(end + (far * step)));
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
