using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>How a source of levels does.</summary>
public enum StreamHealth
{
    /// <summary>Levels come.</summary>
    Good,

    /// <summary>No line came for 3 s.</summary>
    Silent,

    /// <summary>Lines come that are no levels, or far too many of them.</summary>
    Wild,

    /// <summary>The source has ended.</summary>
    Ended,
}

/// <summary>What a stream of levels shows at one moment.</summary>
/// <param name="Health">How the source does.</param>
/// <param name="LevelDb">The last level, dB; null: none yet.</param>
/// <param name="LowDb">10 % quantile over the segment so far, dB; null: too few levels.</param>
/// <param name="HighDb">90 % quantile, dB; off an impact the highest level.</param>
/// <param name="LastSecondsDb">The highest level of each of the last 20 s, oldest first; null: none in it.</param>
public sealed record StreamSight(
    StreamHealth Health,
    double? LevelDb,
    double? LowDb,
    double? HighDb,
    ImmutableArray<double?> LastSecondsDb
);

/// <summary>
/// Levels as a program of the user's prints them, one a line, with or without a time before it. A line counts when it comes. Lines come on
/// one thread and are looked at on another.
/// </summary>
public sealed class StreamedLevels
{
    /// <summary>Seconds of the trace.</summary>
    public const int TraceSeconds = 20;

    private const double LowestDb = 10;
    private const double HighestDb = 150;
    private const double SilentS = 3;
    private const double ShortestS = 3;
    private const int FewestLevels = 3;
    private const int LongestLine = 200;
    private const int JudgedLines = 10;
    private const int MostASecond = 100;
    private const int MostKept = 30_000;

    private readonly Lock _lock = new();
    private readonly Queue<(DateTimeOffset At, double LevelDb)> _levels = new();
    private readonly Queue<(DateTimeOffset At, bool IsLevel)> _lines = new();
    private bool _hasEnded;

    /// <summary>The level in a line: its last word, with point or comma; null: it holds none.</summary>
    public static double? LevelIn(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        string last =
            line.Length > LongestLine ? "" : line.Split([' ', ';', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries).LastOrDefault("");

        // a decimal comma, or a comma between a time and the level
        double? level = NumberIn(last) ?? NumberIn(last[(last.LastIndexOf(',') + 1)..]);
        return level is >= LowestDb and <= HighestDb ? level : null;
    }

    /// <summary>A line came.</summary>
    public void Take(string line, DateTimeOffset at)
    {
        double? level = LevelIn(line);
        lock (_lock)
        {
            _lines.Enqueue((at, level is not null));
            while (_lines.Count > MostASecond + 1)
            {
                _lines.Dequeue();
            }

            if (level is { } known)
            {
                _levels.Enqueue((at, known));
            }

            while (_levels.Count > MostKept)
            {
                _levels.Dequeue();
            }
        }
    }

    /// <summary>No line will come any more.</summary>
    public void End()
    {
        lock (_lock)
        {
            _hasEnded = true;
        }
    }

    /// <summary>What the stream shows now.</summary>
    /// <param name="now">The time.</param>
    /// <param name="from">When the segment began: its levels count from then on.</param>
    /// <param name="isImpact">Whether the highest level is read.</param>
    public StreamSight Now(DateTimeOffset now, DateTimeOffset from, bool isImpact)
    {
        lock (_lock)
        {
            (double Low, double High)? range = RangeOver(now, from, isImpact);
            return new(
                HealthAt(now),
                _levels.Count == 0 ? null : _levels.Last().LevelDb,
                range?.Low,
                range?.High,
                [
                    .. Enumerable
                        .Range(0, TraceSeconds)
                        .Select(i => HighestIn(now.AddSeconds(i - TraceSeconds), now.AddSeconds(i + 1 - TraceSeconds))),
                ]
            );
        }
    }

    private (double Low, double High)? RangeOver(DateTimeOffset now, DateTimeOffset from, bool isImpact)
    {
        double[] levels = [.. _levels.Where(level => level.At >= from && level.At <= now).Select(level => level.LevelDb).Order()];
        if (levels.Length < FewestLevels || (now - from).TotalSeconds < ShortestS || HealthAt(now) != StreamHealth.Good)
        {
            return null;
        }

        return isImpact ? (levels[^1], levels[^1]) : (Quantile.OfSorted(levels, 0.1), Quantile.OfSorted(levels, 0.9));
    }

    private static double? NumberIn(string word) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
            ? number
            : null;

    private StreamHealth HealthAt(DateTimeOffset now)
    {
        bool isSilent = _lines.Count == 0 || (now - _lines.Last().At).TotalSeconds > SilentS;
        return _hasEnded ? StreamHealth.Ended
            : isSilent ? StreamHealth.Silent
            : IsWild() ? StreamHealth.Wild
            : StreamHealth.Good;
    }

    private bool IsWild()
    {
        bool isFlood = _lines.Count > MostASecond && (_lines.Last().At - _lines.Peek().At).TotalSeconds < 1;
        return isFlood || _lines.TakeLast(JudgedLines).Count(line => line.IsLevel) * 2 < Math.Min(JudgedLines, _lines.Count);
    }

    private double? HighestIn(DateTimeOffset from, DateTimeOffset to)
    {
        double? highest = null;
        foreach ((DateTimeOffset _, double level) in _levels.Where(level => level.At > from && level.At <= to))
        {
            highest = Math.Max(highest ?? level, level);
        }

        return highest;
    }
}
