using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What a key meets beside the text in the box.</summary>
/// <param name="Study">The study.</param>
/// <param name="Keys">The keys that act.</param>
internal sealed record TypingMoment(Study Study, KeyTable Keys)
{
    /// <summary>The keys right before, however long ago.</summary>
    public Burst Before { get; init; } = Burst.None;

    /// <summary>Time since the last key.</summary>
    public TimeSpan Since { get; init; } = TimeSpan.MaxValue;

    /// <summary>Whether the note in the box began by itself, from letters without a sign.</summary>
    public bool IsDraft { get; init; }

    /// <summary>The keys right before, where no thought lies between.</summary>
    public Burst Burst => Since < Burst.Gap ? Before : Burst.None;

    /// <summary>The one key before, where it wrote a line; else empty.</summary>
    public string JustWritten => Before is { Keys.Length: 1, Lines.Length: 1 } ? Before.Keys : "";
}
