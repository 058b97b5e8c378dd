using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The scatter that errors are judged by (docs/formulas.md, "Run model", "Archive", "Floor"): run-to-run variance of run means, variance of
/// a reading, what the archive lends, and the floor under it all.
/// </summary>
internal sealed record Scatter
{
    private const double ConflictLevel = 0.95;
    private const double LeastArchiveDf = 3;

    /// <summary>Residual sum of squares of the run means.</summary>
    public required double Rss { get; init; }

    /// <summary>Residual sum of squares of the readings.</summary>
    public required double Sse { get; init; }

    /// <summary>Degrees of freedom of the runs.</summary>
    public required int NuRun { get; init; }

    /// <summary>Run-to-run variance as it came, dB squared; null without degrees of freedom.</summary>
    public double? RunVariance { get; init; }

    /// <summary>Degrees of freedom of a reading.</summary>
    public required int NuE { get; init; }

    /// <summary>Variance of a reading as it came, dB squared; null without degrees of freedom.</summary>
    public double? ReadingVariance { get; init; }

    /// <summary>Share of the reading variance that enters a run mean.</summary>
    public required double Kbar { get; init; }

    /// <summary>The archive's offer.</summary>
    public ArchivePrior? Prior { get; init; }

    /// <summary>The offer was taken.</summary>
    public bool PriorUsed { get; init; }

    /// <summary>The offer was refused because today is rougher.</summary>
    public bool RougherThanArchive { get; init; }

    /// <summary>The floor was needed.</summary>
    public bool FloorApplied { get; init; }

    /// <summary>Run-to-run variance that intervals use; null: none.</summary>
    public double? RunVarianceUsed { get; init; }

    /// <summary>Its degrees of freedom.</summary>
    public double NuUsed { get; init; }

    /// <summary>Variance of a reading that intervals use; null: none.</summary>
    public double? ReadingVarianceUsed { get; init; }

    /// <summary>Weighs today's sums of squares and the archive.</summary>
    /// <param name="rss">Residual sum of squares of the run means.</param>
    /// <param name="nuRun">Its degrees of freedom.</param>
    /// <param name="sse">Residual sum of squares of the readings.</param>
    /// <param name="nuE">Its degrees of freedom.</param>
    /// <param name="kbar">Share of the reading variance in a run mean.</param>
    /// <param name="prior">The archive's offer; null: none.</param>
    public static Scatter Of(double rss, int nuRun, double sse, int nuE, double kbar, ArchivePrior? prior)
    {
        double? run = nuRun > 0 ? rss / nuRun : null;
        double? reading = nuE > 0 ? sse / nuE : null;
        Scatter strict = new()
        {
            Rss = rss,
            Sse = sse,
            NuRun = nuRun,
            RunVariance = run,
            NuE = nuE,
            ReadingVariance = reading,
            Kbar = kbar,
            Prior = prior,
            RunVarianceUsed = run,
            NuUsed = nuRun,
            ReadingVarianceUsed = reading,
        };
        return strict.WithPrior().WithFloor();
    }

    /// <summary>The same sums of squares under another offer of the archive.</summary>
    public Scatter Under(ArchivePrior? prior) => Of(Rss, NuRun, Sse, NuE, Kbar, prior);

    /// <summary>Other sums of squares weighed in the same way: what the archive lends, or not, stays as it was found.</summary>
    /// <param name="rss">Residual sum of squares of the run means.</param>
    /// <param name="nuRun">Its degrees of freedom.</param>
    /// <param name="sse">Residual sum of squares of the readings.</param>
    /// <param name="nuE">Its degrees of freedom.</param>
    /// <param name="kbar">Share of the reading variance in a run mean.</param>
    public Scatter Again(double rss, int nuRun, double sse, int nuE, double kbar)
    {
        Scatter strict = Of(rss, nuRun, sse, nuE, kbar, null);
        return PriorUsed && Prior is { } lent ? (strict with { Prior = lent }).Lent(lent).WithFloor() : strict;
    }

    private Scatter WithPrior()
    {
        if (Prior is null || Prior.NuArchive < LeastArchiveDf)
        {
            return this;
        }

        double s0Squared = Prior.S0SquaredDb2;
        if (RunVariance / s0Squared > (NuRun > 0 ? FisherF.Quantile(ConflictLevel, NuRun, Prior.NuArchive) : 0))
        {
            return this with { RougherThanArchive = true };
        }

        return Lent(Prior);
    }

    private Scatter Lent(ArchivePrior prior)
    {
        double nu = prior.Nu0 + NuRun;
        return this with { PriorUsed = true, RunVarianceUsed = (prior.Nu0 * prior.S0SquaredDb2 + Rss) / nu, NuUsed = nu };
    }

    private Scatter WithFloor()
    {
        if (ReadingVarianceUsed is not double reading || RunVarianceUsed is not double run || run >= Kbar * reading)
        {
            return this;
        }

        double pooled = (Sse + NuUsed * run / Kbar) / (NuE + NuUsed);
        return this with { FloorApplied = true, ReadingVarianceUsed = pooled, RunVarianceUsed = Kbar * pooled };
    }
}

/// <summary>
/// What earlier days lend to today's run-to-run variance (docs/formulas.md, "Archive"): a scaled inverse chi-square prior from their pooled
/// run variances, each with its reading part replaced by today's (conjugate pooling: A. Gelman et al., Bayesian Data Analysis, section
/// 2.6).
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

/// <summary>What the archive lends: a variance of run means and how much it weighs.</summary>
/// <param name="S0SquaredDb2">Variance of a run mean expected from earlier days, dB squared.</param>
/// <param name="NuArchive">Degrees of freedom behind it.</param>
/// <param name="Nu0">Degrees of freedom it is allowed to weigh, at most 6.</param>
/// <param name="Days">How many earlier days are behind it.</param>
public sealed record ArchivePrior(double S0SquaredDb2, double NuArchive, double Nu0, int Days);
