namespace FieldSession.State;

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
