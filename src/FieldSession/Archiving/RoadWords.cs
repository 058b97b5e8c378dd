using System.Globalization;

namespace FieldSession.Archiving;

/// <summary>The advice on a road in plain words.</summary>
public static class RoadWords
{
    /// <summary>What earlier days say of the road, a sentence each, at most 15 words.</summary>
    public static IEnumerable<string> Of(RoadAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return
        [
            .. advice.Swaps.Select(swap => string.Create(
                CultureInfo.CurrentCulture, $"Drive {swap.In.Segment} for {swap.Out.Segment}: it says {swap.In.PerDb2Minute / swap.Out.PerDb2Minute:0.#} times as much per minute.")),
            .. advice.Missing.Select(sum => $"No {sum.Kind} segment is in the plan: add {sum.Segment}."),
            .. advice.Spoilt.Select(sum => string.Create(CultureInfo.CurrentCulture, $"{sum.Segment} lost {sum.SpoiltShare * 100:0} % of its readings: choose another.")),
            .. Saved(advice),
        ];
    }

    private static IEnumerable<string> Saved(RoadAdvice advice) => (advice.Swaps.Length, advice.RunsNow, advice.RunsThen) switch
    {
        (0, { } now, _) => [$"The road is good: no segment of the archive saves a run; {now} runs per code are needed."],
        (_, { } now, { } then) when then < now => [$"With these segments {then} runs per code are enough instead of {now}."],
        (> 0, { } now, _) => [$"That saves no run: {now} runs per code are needed either way."],
        _ => [],
    };
}
