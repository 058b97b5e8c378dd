using System.Collections.Immutable;

namespace FieldSession.Measures;

/// <summary>
/// What someone in the car gives for one attribute, on the trade's scale of 1 (unbearable) to 10 (nothing to be
/// noticed), in quarter points. Common practice, no source; our own words for the steps are in
/// <see cref="RatingSteps"/>.
/// </summary>
/// <param name="Points">1..10, a whole number of quarters.</param>
public readonly record struct Score(double Points)
{
    /// <summary>The lowest score.</summary>
    public const double LowestPoints = 1;

    /// <summary>The highest score.</summary>
    public const double HighestPoints = 10;

    /// <summary>The finest step of the scale, points.</summary>
    public const double StepPoints = 0.25;

    /// <summary>
    /// The fixed score of the code that brackets the others, for every attribute: the others are rated against it. Common
    /// practice, no source.
    /// </summary>
    public static Score Anchor => new(7);

    /// <summary>Whether a number is a score: 1..10 in quarters.</summary>
    public static bool IsScore(double points) => points is >= LowestPoints and <= HighestPoints && double.IsInteger(points / StepPoints);

    /// <summary>A score.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1..10 or no whole number of quarters.</exception>
    public static Score FromPoints(double points) =>
        IsScore(points) ? new Score(points) : throw new ArgumentOutOfRangeException(nameof(points), "a score is 1 to 10 in quarter points");

    /// <summary>The score as the crew says it: "6.25", "7".</summary>
    public override string ToString() => $"{Points:0.##}";
}

/// <summary>
/// Our own wording of the steps from 10 to 1: for what disturbs (noise, shake) and for what the car does (steering, handling).
/// </summary>
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
