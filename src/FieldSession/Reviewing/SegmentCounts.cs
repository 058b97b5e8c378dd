using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>How many clean readings are behind each code on each segment.</summary>
public sealed class SegmentCounts
{
    private readonly Dictionary<(string Segment, string Code), int> _clean;

    private SegmentCounts(Dictionary<(string Segment, string Code), int> clean) => _clean = clean;

    /// <summary>Counts a day.</summary>
    public static SegmentCounts Of(MeasuredDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        Dictionary<(string Segment, string Code), int> clean = [];
        foreach (MeasuredLevel level in day.Levels)
        {
            if (!level.Spoilt)
            {
                (string, string) key = (level.Segment, level.Code);
                clean[key] = clean.GetValueOrDefault(key) + 1;
            }
        }

        return new SegmentCounts(clean);
    }

    /// <summary>Clean readings of a code on a segment.</summary>
    public int Clean(string segment, string code) => _clean.GetValueOrDefault((segment, code));
}
