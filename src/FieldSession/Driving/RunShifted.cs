using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// The co-driver had slipped by some segments: from one segment on, everything typed in a run belongs further on or
/// further back. One recorded act puts the whole rest of the run right.
/// </summary>
/// <param name="Run">Number of the run.</param>
/// <param name="FromSegment">The first segment, as it was typed, that is wrong.</param>
/// <param name="By">How many segments further on (above 0) or back (below 0).</param>
public sealed record RunShifted(int Run, int FromSegment, int By) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => StopGate.ObjectionIn(study) ?? ObjectionToPlaces(study);

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Run = study.NumberOf(Run, study.Runs.Select(run => run.Started)) };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Run run = study.Runs[Run - 1];
        ImmutableList<Passage> passages = run.Passages.ConvertAll(passage => study.Hand.Knows(passage.Mark) ? Moved(passage, study.Plan!) : passage);
        Run shifted = run with { Passages = passages, Furthest = passages.Select(p => p.Segment).DefaultIfEmpty().Max(), Shifts = run.Shifts.Add(mark) };
        return (study with { Runs = study.Runs.SetItem(Run - 1, shifted) }).Undoably(study, mark, Words);
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string places = string.Join(", ", after.Runs[Run - 1].Passages.Where(p => p.Segment >= FromSegment + Math.Min(By, 0)).Select(p => p.Segment));
        return new Echo(DrivingWords.RunShifted(Run, By, FromSegment, places));
    }

    private string Words => $"shift {Run}.{FromSegment} {By:+0;-0}";

    private Passage Moved(Passage passage, Plan plan)
    {
        if (passage.Segment < FromSegment)
        {
            return passage;
        }

        int place = passage.Segment + By;
        // another laptop may have shifted the same run meanwhile: nothing leaves the route
        if (place < 1 || place > plan.Route.Count)
        {
            return passage;
        }

        return passage is Reading reading
            ? reading with { Segment = place, Doubt = ReadingDoubt.OfValue(reading.Levels, plan.Route[place - 1], plan.Limits), Confirmed = false }
            : passage with { Segment = place };
    }

    private Objection? ObjectionToPlaces(Study study)
    {
        const string Form = DrivingWords.ShiftForm;
        if (Run < 1 || Run > study.Runs.Count || By == 0)
        {
            return new Objection(By == 0 ? DrivingWords.ShiftByChangesNothing : DrivingWords.ThereIsNoRun(Run), Form);
        }

        ImmutableList<Passage> passages = study.Runs[Run - 1].Passages;
        int[] moved = [.. passages.Where(p => p.Segment >= FromSegment).Select(p => p.Segment + By)];
        if (moved.Length == 0)
        {
            return new Objection(DrivingWords.RunHasNothingFromSegment(Run, FromSegment), Form);
        }

        int last = study.Plan!.Route.Count;
        int? beyond = moved.Cast<int?>().FirstOrDefault(p => p < 1 || p > last);
        int? taken = passages.Where(p => p.Segment < FromSegment).Select(p => (int?)p.Segment).FirstOrDefault(p => moved.Contains(p!.Value));
        return (beyond, taken) switch
        {
            ({ } outside, _) => new Objection(DrivingWords.SegmentIsBeyondRoute(outside, last), Form),
            (_, { } occupied) => new Objection(DrivingWords.SegmentHasEntryAlready(occupied), DrivingWords.FlagOrUndoEntryFirst),
            _ => null,
        };
    }
}
