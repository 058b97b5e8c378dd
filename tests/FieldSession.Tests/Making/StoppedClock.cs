namespace FieldSession.Tests.Making;

/// <summary>A clock that stands until it is moved.</summary>
internal sealed class StoppedClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 2, 3, 9, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;

    public void Advance(TimeSpan by) => Now += by;
}
