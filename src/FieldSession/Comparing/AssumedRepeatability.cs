namespace FieldSession.Comparing;

/// <summary>
/// A second line for days without an archive: the interval if runs repeat as assumed, s0 = 0.5 dB with 3 degrees of freedom, on steady segments. Own
/// assumption, not measured; it is shown grey and never gives verdict words (docs/formulas.md, "Archive").
/// </summary>
internal static class AssumedRepeatability
{
    private const double S0Db = 0.5;
    private const double Nu0 = 3;

    // with more, the day's own scatter says more than an assumption
    private const int MostOwnDf = 2;

    /// <summary>The overall line; null where an archive or three degrees of freedom of the day speak, for other classes, or if today is plainly rougher than assumed.</summary>
    public static Estimate? Of(PairLine pair, MeasureClass? measureClass)
    {
        if (measureClass != MeasureClass.Steady || pair.Model.Scatter is not { Prior: null, NuRun: <= MostOwnDf })
        {
            return null;
        }

        ClassModel assumed = pair.Model.With(new ArchivePrior(S0Db * S0Db, Nu0, Nu0, 0));
        return assumed.Scatter.PriorUsed ? assumed.Line(pair.Contrast, assumed.AllColumns, pair.MarginDb) : null;
    }
}
