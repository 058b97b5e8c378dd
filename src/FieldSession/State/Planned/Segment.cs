using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>A marked stretch of the route with one kind of surface and one speed.</summary>
/// <param name="Number">Place in the route, from 1.</param>
/// <param name="Name">The crew's name of it; no two segments share one.</param>
/// <param name="Kind">Its surface.</param>
/// <param name="Speed">The speed it is driven at.</param>
/// <param name="Length">How long it is.</param>
public sealed record Segment(int Number, string Name, SegmentKind Kind, Speed Speed, Distance Length)
{
    /// <summary>The posted limit; null: not noted.</summary>
    public Speed? Limit { get; init; }

    /// <summary>The level to be expected, dB(A), known before the day; readings far from it are asked about. Null: not known.</summary>
    public double? NominalDb { get; init; }

    /// <summary>What the crew sees where the segment begins.</summary>
    public string? StartMark { get; init; }

    /// <summary>A note phrase of the segment's own.</summary>
    public string? Phrase { get; init; }

    /// <summary>Seconds that the segment lasts at its speed.</summary>
    public double Seconds => Length.SecondsAt(Speed);
}

/// <summary>
/// The kind of a segment's surface: impact, or a word for a steady surface (smooth, coarse, concrete, rough, cobble,
/// or one of the crew's own). Impacts are read as peaks and never compared together with steady ranges.
/// </summary>
/// <param name="Word">The word, lower case.</param>
/// <param name="IsImpact">Whether peaks are read on it.</param>
public readonly record struct SegmentKind(string Word, bool IsImpact)
{
    /// <summary>The word of the impact kind.</summary>
    public const string ImpactWord = "impact";

    /// <summary>The kind that a word names.</summary>
    public static SegmentKind Of(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        string lower = word.Trim().ToLowerInvariant();
        return new SegmentKind(lower, lower == ImpactWord);
    }

    /// <inheritdoc/>
    public override string ToString() => Word;
}
