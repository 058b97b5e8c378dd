namespace FieldSession.Terminal.Demonstration;

/// <summary>A clock that runs on from a moment of the demo day, so that the run that is left to drive follows the others in time.</summary>
/// <param name="real">The clock that runs.</param>
/// <param name="from">The moment it runs on from.</param>
internal sealed class LaterClock(TimeProvider real, DateTimeOffset from) : TimeProvider
{
    private readonly TimeSpan _shift = from - real.GetUtcNow();

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => real.GetUtcNow() + _shift;

    /// <inheritdoc/>
    public override long GetTimestamp() => real.GetTimestamp();

    /// <inheritdoc/>
    public override long TimestampFrequency => real.TimestampFrequency;
}
