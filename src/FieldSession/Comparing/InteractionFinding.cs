using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// Does the difference of a pair depend on the segment (docs/formulas.md, "Segments")? F test of the additive model of both codes together against
/// the fits inside each code; the denominator is the reading variance of all codes.
/// </summary>
internal static class InteractionFinding
{
    /// <summary>The test; null without degrees of freedom or without any scatter.</summary>
    public static Interaction? Of(PairLine pair, DayTable table)
    {
        ClassModel model = pair.Model;
        if (model.Scatter.ReadingVariance is not > 0)
        {
            return null;
        }

        (AdditiveFit first, AdditiveFit second) = (model.Fits[pair.First], model.Fits[pair.Second]);
        int[] rows = [.. model.Counted.RunsByCode[pair.First], .. model.Counted.RunsByCode[pair.Second]];
        AdditiveFit together = AdditiveFit.Of(rows.Length, first.Columns, ClassModel.Cells(table, model.Counted, rows));
        int df = together.Df - first.Df - second.Df;
        if (df <= 0)
        {
            return null;
        }

        double f = Math.Max(0, together.Rss - first.Rss - second.Rss) / df / model.Scatter.ReadingVariance.Value;
        return new Interaction(f, df, model.Scatter.NuE, FisherF.UpperTail(f, df, model.Scatter.NuE));
    }
}
