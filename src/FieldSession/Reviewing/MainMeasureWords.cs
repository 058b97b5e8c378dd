using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the main question is answered on, in words.</summary>
public static class MainMeasureWords
{
    /// <summary>"the steady segments", or "the main segments Mill lane, Quarry road".</summary>
    /// <param name="measure">The main measure.</param>
    /// <param name="segments">The main segments; null: all that the measure takes.</param>
    public static string Of(MainMeasure measure, IReadOnlyList<string>? segments) => (measure, segments) switch
    {
        (_, { } names) => Named(names),
        (MainMeasure.Impact, _) => "the impacts",
        (MainMeasure.All, _) => "all segments together",
        _ => "the steady segments",
    };

    /// <summary>"the main segments Mill lane, Quarry road".</summary>
    public static string Named(IReadOnlyList<string> segments)
    {
        ArgumentNullException.ThrowIfNull(segments);
        return $"the main segment{(segments.Count == 1 ? "" : "s")} {string.Join(", ", segments)}";
    }
}
