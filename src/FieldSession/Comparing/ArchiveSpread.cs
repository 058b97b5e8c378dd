namespace FieldSession.Comparing;

/// <summary>How runs and readings scattered on earlier days, each day weighing by its degrees of freedom: what a day is planned from.</summary>
/// <param name="RunSdDb">Standard deviation of the runs themselves, reading scatter taken off, dB.</param>
/// <param name="ReadingSdDb">Standard deviation of a reading, dB.</param>
public sealed record ArchiveSpread(double RunSdDb, double ReadingSdDb)
{
    /// <summary>The scatter of a class; null: no line of it has degrees of freedom for both.</summary>
    public static ArchiveSpread? Of(IEnumerable<ArchiveLine> lines, MeasureClass? measureClass)
    {
        ArchiveLine[] known = [.. lines.Where(line => line.Class == measureClass && line is { NuRun: > 0, NuE: > 0, SRunDb: not null, SEDb: not null })];
        return known.Length == 0 ? null : new ArchiveSpread(
            Math.Sqrt(known.Sum(line => line.NuRun * Math.Max(0, Square(line.SRunDb) - (line.Kbar * Square(line.SEDb)))) / known.Sum(line => line.NuRun)),
            Math.Sqrt(known.Sum(line => line.NuE * Square(line.SEDb)) / known.Sum(line => line.NuE)));
    }

    private static double Square(double? number) => (number ?? 0) * (number ?? 0);
}
