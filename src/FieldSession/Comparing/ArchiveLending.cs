namespace FieldSession.Comparing;

/// <summary>
/// What earlier days lend to today's run-to-run variance (docs/formulas.md, "Archive"): a scaled inverse chi-square prior from their pooled run
/// variances, each with its reading part replaced by today's (conjugate pooling: A. Gelman et al., Bayesian Data Analysis, section 2.6).
/// </summary>
internal static class ArchiveLending
{
    /// <summary>The prior never weighs more than this, however long the archive: simulated, docs/formulas.md.</summary>
    private const double MostNu0 = 6;

    /// <summary>The offer for a class; null: no line with degrees of freedom for it, or no variance in any.</summary>
    public static ArchivePrior? For(MeasureClass? measureClass, IReadOnlyList<ArchiveLine>? archive, int segmentsToday)
    {
        ArchiveLine[] lines = [.. (archive ?? []).Where(line => line.Class == measureClass && line.NuRun > 0 && line.SRunDb is not null)];
        double nu = lines.Sum(line => line.NuRun);
        double pooled = lines.Sum(line => line.NuRun * Variance(line, segmentsToday));
        return nu > 0 && pooled > 0
            ? new ArchivePrior(pooled / nu, nu, Math.Min(nu, MostNu0), lines.Select(line => line.Day).Distinct().Count())
            : null;
    }

    private static double Variance(ArchiveLine line, int segmentsToday)
    {
        double run = line.SRunDb!.Value * line.SRunDb.Value;
        double reading = line.SEDb is double sE ? sE * sE : 0;
        return Math.Max(0, run - line.Kbar * reading) + reading / segmentsToday;
    }
}
