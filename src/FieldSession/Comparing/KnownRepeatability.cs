namespace FieldSession.Comparing;

/// <summary>How well the means of runs repeated on earlier days, pooled over an archive as the comparison pools it (docs/formulas.md, "Archive").</summary>
/// <param name="RunMeanSdDb">Standard deviation of a run's mean on a route of so many segments, dB, above 0.</param>
/// <param name="Days">How many days it rests on.</param>
public sealed record KnownRepeatability(double RunMeanSdDb, int Days)
{
    /// <summary>What an archive knows of a class; null: nothing.</summary>
    /// <param name="archive">The earlier days; null: none.</param>
    /// <param name="measureClass">The class.</param>
    /// <param name="segments">Segments of the class on the route that is planned; without one nothing is known.</param>
    public static KnownRepeatability? In(IReadOnlyList<ArchiveLine>? archive, MeasureClass? measureClass, int segments) =>
        segments > 0 && ArchiveLending.For(measureClass, archive, segments) is { } lent ? new KnownRepeatability(Math.Sqrt(lent.S0SquaredDb2), lent.Days) : null;
}
