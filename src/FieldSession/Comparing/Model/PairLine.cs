using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>Two codes of a model, held against each other over all compared segments.</summary>
/// <param name="Model">The model.</param>
/// <param name="First">Place of the code in the model.</param>
/// <param name="Second">Place of the reference in the model.</param>
/// <param name="Contrast">First minus second, before segments are chosen.</param>
/// <param name="Overall">First minus second.</param>
/// <param name="MarginDb">Margin of equivalence, dB.</param>
/// <param name="ConfoundedWith">What cannot be told apart from this pair; null: nothing.</param>
internal sealed record PairLine(
    ClassModel Model,
    int First,
    int Second,
    ModelContrast Contrast,
    Estimate Overall,
    double MarginDb,
    string? ConfoundedWith
)
{
    /// <summary>The pair in a view; null if there is no model or a code is not in it.</summary>
    public static PairLine? Of(ClassView? view, int code, int reference, ComparisonTerms terms)
    {
        if (view?.Model is not ClassModel model)
        {
            return null;
        }

        (int first, int second) = (model.PlaceOf(code), model.PlaceOf(reference));
        if (first < 0 || second < 0)
        {
            return null;
        }

        ModelContrast contrast = model.Contrast(first, second);
        double marginDb = terms.MarginOfDb(view.Class);
        Estimate overall = model.Line(contrast, model.AllColumns, marginDb);
        return new PairLine(model, first, second, contrast, overall, marginDb, model.Design.ConfoundedWith(contrast.Weights));
    }
}

/// <summary>
/// Every pair out of three codes or more, from the one model of the class, with Holm over the pairs (<see cref="Holm"/>).
/// </summary>
internal static class CodePairs
{
    /// <summary>The pairs of a view; empty for fewer than three codes.</summary>
    public static IReadOnlyList<PairEstimate> Of(ClassView? view, DayTable table, ComparisonTerms terms)
    {
        if (view?.Model is not ClassModel model || model.Counted.Codes.Length < 3)
        {
            return [];
        }

        int[] codes = model.Counted.Codes;
        PairEstimate[] pairs =
        [
            .. from first in codes
            from second in codes
            where first < second
            select new PairEstimate(
                view.Class,
                table.Codes[first],
                table.Codes[second],
                PairLine.Of(view, first, second, terms)!.Overall,
                null
            ),
        ];
        double[] adjusted = Holm.Adjust([.. pairs.Where(pair => pair.Overall.P is not null).Select(pair => pair.Overall.P!.Value)]);
        int next = 0;
        return [.. pairs.Select(pair => pair.Overall.P is null ? pair : pair with { PHolm = adjusted[next++] })];
    }
}

/// <summary>
/// A second line for days without an archive: the interval if runs repeat as assumed, s0 = 0.5 dB with 3 degrees of freedom, on steady
/// segments. Own assumption, not measured; it is shown grey and never gives verdict words (docs/formulas.md, "Archive").
/// </summary>
internal static class AssumedRepeatability
{
    private const double S0Db = 0.5;
    private const double Nu0 = 3;

    // with more, the day's own scatter says more than an assumption
    private const int MostOwnDf = 2;

    /// <summary>
    /// The overall line; null where an archive or three degrees of freedom of the day speak, for other classes, or if today is plainly
    /// rougher than assumed.
    /// </summary>
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
