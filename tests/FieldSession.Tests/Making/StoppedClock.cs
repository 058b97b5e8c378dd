namespace FieldSession.Tests.Making;

/// <summary>A clock that stays until it is moved, or set to another time while no time passes.</summary>
internal sealed class StoppedClock : TimeProvider
{
    private TimeSpan _set;

    public DateTimeOffset Now { get; set; } = new(2026, 2, 3, 9, 0, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override DateTimeOffset GetUtcNow() => Now + _set;

    public override long GetTimestamp() => Now.UtcTicks;

    public void Advance(TimeSpan by) => Now += by;

    /// <summary>Sets what the clock shows; no time passes.</summary>
    public void Set(TimeSpan by) => _set += by;
}
