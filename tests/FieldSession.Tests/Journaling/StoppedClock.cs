namespace FieldSession.Tests.Journaling;

/// <summary>A clock that stands still.</summary>
internal sealed class StoppedClock : TimeProvider
{
    public static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Start;
}
