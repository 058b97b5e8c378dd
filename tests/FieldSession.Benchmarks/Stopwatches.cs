using System.Diagnostics;

namespace FieldSession.Benchmarks;

/// <summary>How long things take.</summary>
internal static class Stopwatches
{
    /// <summary>Milliseconds of an act, several times over, after one that does not count.</summary>
    public static double[] Ms(int times, Action act) => Ms(times, () => { }, act);

    /// <summary>The same with something before each act that does not count.</summary>
    public static double[] Ms(int times, Action before, Action act) =>
        [
            .. Enumerable
                .Range(0, times + 1)
                .Select(_ =>
                {
                    before();
                    return Micros(act) / 1000;
                })
                .Skip(1),
        ];

    /// <summary>The median of those milliseconds.</summary>
    public static double MedianMs(int times, Action act) => Ms(times, act).Order().ElementAt(times / 2);

    /// <summary>Microseconds of one act.</summary>
    public static double Micros(Action act)
    {
        long start = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(start).TotalMicroseconds;
    }
}
