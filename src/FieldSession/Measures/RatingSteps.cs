using System.Collections.Immutable;

namespace FieldSession.Measures;

/// <summary>Our own wording of the steps from 10 to 1: for what disturbs (noise, shake) and for what the car does (steering, handling).</summary>
public static class RatingSteps
{
    /// <summary>The steps, highest first.</summary>
    public static ImmutableArray<ScoreStep> All { get; } =
    [
        new(10, "not there at all", "nothing could be better"),
        new(9, "there if you look for it", "a joy"),
        new(8, "there, and at once forgotten", "good"),
        new(7, "there, and you live with it", "good, with one wish left"),
        new(6, "you would like less of it", "will do"),
        new(5, "just bearable", "just bearable"),
        new(4, "it gets on your nerves", "poor"),
        new(3, "you complain to others", "bad"),
        new(2, "you turn round and go home", "you drive with care"),
        new(1, "unfit for the road", "unfit for the road"),
    ];

    /// <summary>The words for a score, those of the whole step at or below it.</summary>
    public static ScoreStep Of(Score score) => All.First(step => step.Points <= score.Points);
}

/// <summary>A step of the scale in words.</summary>
/// <param name="Points">The score, a whole number 1..10.</param>
/// <param name="Disturbance">For what disturbs.</param>
/// <param name="Control">For what the driver asks of the car.</param>
public sealed record ScoreStep(int Points, string Disturbance, string Control);
