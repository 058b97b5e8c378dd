using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Aligning;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>The stretch of a recording in which one reading was read off the meter.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Window">The stretch, s from the first sample.</param>
/// <param name="StoredS">When the reading was stored, s from the first sample.</param>
/// <param name="IsImpact">Whether it was read off an impact.</param>
public sealed record HeardWindow(Reading Reading, TimeWindow Window, double StoredS, bool IsImpact)
{
    /// <summary>
    /// The windows of a run's readings, in the order of time. What was filled in at a stop or copied from paper has none: nobody knows when
    /// it was read.
    /// </summary>
    /// <param name="run">The run.</param>
    /// <param name="route">The plan's segments.</param>
    /// <param name="offset">Recording = laptop + offset.</param>
    public static ImmutableArray<HeardWindow> Of(Run run, ImmutableList<Segment> route, ClockOffset offset)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(route);
        ArgumentNullException.ThrowIfNull(offset);
        List<HeardWindow> windows = [];
        double before = offset.RecorderS(RecordingClock.SecondsOf(run.Started.At));
        foreach (Passage passage in run.Passages.Where(IsTimed).OrderBy(passage => passage.Mark.At).ThenBy(passage => passage.Mark.Number))
        {
            double stored = offset.RecorderS(RecordingClock.SecondsOf(passage.Mark.At));
            Segment segment = route[passage.Segment - 1];
            if (passage is Reading reading && WindowOf(segment, stored, before, offset.HalfRangeS) is { } window)
            {
                windows.Add(new(reading, window, stored, segment.Kind.IsImpact));
            }

            before = stored;
        }

        return [.. windows];
    }

    private static bool IsTimed(Passage passage) => !passage.Mark.IsTypedLater && passage is not Reading { FilledAtStop: true };

    private static TimeWindow? WindowOf(Segment segment, double stored, double before, double halfRange) =>
        segment.Kind.IsImpact
            ? ReadWindow.OfImpact(stored, segment.Seconds, before, halfRange)
            : ReadWindow.OfSteady(stored, segment.Seconds, before, halfRange);
}

/// <summary>A run for which a recording's meter is asked: its windows, and where they are among all that the meter is asked for.</summary>
/// <param name="Number">Number of the run.</param>
/// <param name="Chain">The chain.</param>
/// <param name="Ring">The ring band.</param>
/// <param name="Readings">How many readings the run has.</param>
/// <param name="Windows">The windows of its readings.</param>
/// <param name="First">Which of the meter's windows is its first.</param>
/// <param name="FirstImpact">Which of the meter's impacts is its first.</param>
public sealed record MeteredRun(
    int Number,
    string Chain,
    FrequencyBand Ring,
    int Readings,
    ImmutableArray<HeardWindow> Windows,
    int First,
    int FirstImpact
)
{
    /// <summary>The runs of a recording, one behind the other.</summary>
    public static ImmutableArray<MeteredRun> Of(IEnumerable<Run> runs, Plan plan, string chain, ClockOffset offset)
    {
        ArgumentNullException.ThrowIfNull(runs);
        ArgumentNullException.ThrowIfNull(plan);
        List<MeteredRun> metered = [];
        foreach (Run run in runs)
        {
            metered.Add(
                new(
                    run.Number,
                    chain,
                    plan.RingBand,
                    run.Readings.Count(),
                    HeardWindow.Of(run, plan.Route, offset),
                    metered.Sum(one => one.Windows.Length),
                    metered.Sum(one => one.Impacts.Count())
                )
            );
        }

        return [.. metered];
    }

    /// <summary>Its impacts.</summary>
    public IEnumerable<HeardWindow> Impacts => Windows.Where(window => window.IsImpact);

    /// <summary>How long the ring lasts after the impact of a window; null: it is none, or it can't be told.</summary>
    public RingDecayTime? DecayOf(HeardWindow window, RecordingLevels levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        int at = Impacts.TakeWhile(impact => impact != window).Count();
        return window.IsImpact && ImpactPiece.Of(levels.Impacts[FirstImpact + at], levels.LowRateHz) is { } piece
            ? RingDecay.Of([piece], levels.LowRateHz, RingBand.Decay)
            : null;
    }
}
