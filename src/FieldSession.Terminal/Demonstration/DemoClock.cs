using System.Globalization;

namespace FieldSession.Terminal.Demonstration;

/// <summary>The clock of a day that was driven long ago: it is at the time that the day's remarks say.</summary>
internal sealed class DemoClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 2, 3, 8, 0, 0, TimeSpan.Zero);

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _now;

    /// <inheritdoc/>
    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    /// <inheritdoc/>
    public override long GetTimestamp() => _now.UtcTicks;

    /// <summary>Sets the clock where a remark says when, such as <c># at 2026-02-03T09:15</c>.</summary>
    public void Follow(string line)
    {
        const string At = "# at ";
        if (line.StartsWith(At, StringComparison.Ordinal) && DateTimeOffset.TryParse(
            line[At.Length..] + "Z", CultureInfo.InvariantCulture, out DateTimeOffset said))
        {
            _now = said;
        }
    }

    /// <summary>Moves on, as typing and driving take their time.</summary>
    public void Advance(TimeSpan by) => _now += by;
}
