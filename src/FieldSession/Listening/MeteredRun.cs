using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Aligning;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>A run for which a recording's meter is asked: its windows, and where they are among all that the meter is asked for.</summary>
/// <param name="Number">Number of the run.</param>
/// <param name="Chain">The chain.</param>
/// <param name="Ring">The ring band.</param>
/// <param name="Readings">How many readings the run has.</param>
/// <param name="Windows">The windows of its readings.</param>
/// <param name="First">Which of the meter's windows is its first.</param>
/// <param name="FirstImpact">Which of the meter's impacts is its first.</param>
public sealed record MeteredRun(int Number, string Chain, FrequencyBand Ring, int Readings, ImmutableArray<HeardWindow> Windows, int First, int FirstImpact)
{
    /// <summary>The runs of a recording, one behind the other.</summary>
    public static ImmutableArray<MeteredRun> Of(IEnumerable<Run> runs, Plan plan, string chain, ClockOffset offset)
    {
        ArgumentNullException.ThrowIfNull(runs);
        ArgumentNullException.ThrowIfNull(plan);
        List<MeteredRun> metered = [];
        foreach (Run run in runs)
        {
            metered.Add(new(
                run.Number,
                chain,
                plan.RingBand,
                run.Readings.Count(),
                HeardWindow.Of(run, plan.Route, offset),
                metered.Sum(one => one.Windows.Length),
                metered.Sum(one => one.Impacts.Count())));
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
