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
    public static bool IsScore(double points) =>
        points is >= LowestPoints and <= HighestPoints && double.IsInteger(points / StepPoints);

    /// <summary>A score.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1..10 or no whole number of quarters.</exception>
    public static Score FromPoints(double points) => IsScore(points)
        ? new Score(points)
        : throw new ArgumentOutOfRangeException(nameof(points), "a score is 1 to 10 in quarter points");

    /// <summary>The score as the crew says it: "6.25", "7".</summary>
    public override string ToString() => $"{Points:0.##}";
}
