using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The scatter that errors are judged by (docs/formulas.md, "Run model", "Archive", "Floor"): run-to-run variance of run means, variance of a
/// reading, what the archive lends, and the floor under it all.
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
