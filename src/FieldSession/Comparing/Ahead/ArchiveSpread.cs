namespace FieldSession.Comparing;

/// <summary>
/// How runs and readings scattered on earlier days, each day weighing by its degrees of freedom: what a day is planned from.
/// </summary>
/// <param name="RunSdDb">Standard deviation of the runs themselves, reading scatter taken off, dB.</param>
/// <param name="ReadingSdDb">Standard deviation of a reading, dB.</param>
public sealed record ArchiveSpread(double RunSdDb, double ReadingSdDb)
{
    /// <summary>The scatter of a class; null: no line of it has degrees of freedom for both.</summary>
    public static ArchiveSpread? Of(IEnumerable<ArchiveLine> lines, MeasureClass? measureClass)
    {
        ArchiveLine[] known =
        [
            .. lines.Where(line => line.Class == measureClass && line is { NuRun: > 0, NuE: > 0, SRunDb: not null, SEDb: not null }),
        ];
        return known.Length == 0
            ? null
            : new ArchiveSpread(
                Math.Sqrt(
                    known.Sum(line => line.NuRun * Math.Max(0, Square(line.SRunDb) - (line.Kbar * Square(line.SEDb))))
                        / known.Sum(line => line.NuRun)
                ),
                Math.Sqrt(known.Sum(line => line.NuE * Square(line.SEDb)) / known.Sum(line => line.NuE))
            );
    }

    private static double Square(double? number) => (number ?? 0) * (number ?? 0);
}

/// <summary>
/// How well the means of runs repeated on earlier days, pooled over an archive as the comparison pools it (docs/formulas.md, "Archive").
/// </summary>
/// <param name="RunMeanSdDb">Standard deviation of a run's mean on a route of so many segments, dB, above 0.</param>
/// <param name="Days">How many days it rests on.</param>
public sealed record KnownRepeatability(double RunMeanSdDb, int Days)
{
    /// <summary>What an archive knows of a class; null: nothing.</summary>
    /// <param name="archive">The earlier days; null: none.</param>
    /// <param name="measureClass">The class.</param>
    /// <param name="segments">Segments of the class on the route that is planned; without one nothing is known.</param>
    public static KnownRepeatability? In(IReadOnlyList<ArchiveLine>? archive, MeasureClass? measureClass, int segments) =>
        segments > 0 && ArchiveLending.For(measureClass, archive, segments) is { } lent
            ? new KnownRepeatability(Math.Sqrt(lent.S0SquaredDb2), lent.Days)
            : null;
}
