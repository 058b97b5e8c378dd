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
    ClassModel Model, int First, int Second, ModelContrast Contrast, Estimate Overall, double MarginDb, string? ConfoundedWith)
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
