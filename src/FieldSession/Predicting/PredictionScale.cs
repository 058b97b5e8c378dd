using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>
/// What "how sure" means as a probability. A prediction names one code of which it says that it has the feature: that it is
/// a candidate, any spec but the control. Pointing blindly hits with the chance (specs - 1) / specs. Step 1, a guess, is
/// that chance, step 5 is certainty, the steps between lie evenly (own method, docs/formulas.md, "Predictions").
/// </summary>
public static class PredictionScale
{
    /// <summary>Steps of the scale, 1 to 5.</summary>
    public const int Steps = 5;

    /// <summary>The chance that a code picked blindly has the feature, 0.5 with two specs.</summary>
    /// <param name="specs">How many specs are compared, 2 or more.</param>
    public static double Chance(int specs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(specs, 2);
        return (specs - 1.0) / specs;
    }

    /// <summary>The probability that a prediction states, 0..1: the per cent as said, or its step.</summary>
    /// <param name="prediction">The prediction.</param>
    /// <param name="specs">How many specs are compared.</param>
    public static double Stated(Prediction prediction, int specs)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        double chance = Chance(specs);
        return prediction.SurePercent is { } percent ? percent / 100.0 : chance + ((1 - chance) * (prediction.Sure - 1) / (Steps - 1));
    }

    /// <summary>How sure in the words of the one who said it: "4 of 5" or "80 %".</summary>
    public static string InWords(Prediction prediction)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        return prediction.SurePercent is { } percent ? $"{percent} %" : $"{prediction.Sure} of {Steps}";
    }

    /// <summary>Reads "4" or "80%"; per cent keep the nearest step of two codes beside them. Null where the text is neither.</summary>
    public static (int Step, int? Percent)? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string typed = text.Trim();
        if (!typed.EndsWith('%'))
        {
            return Typed.Count(typed) is { } step ? (step, null) : null;
        }

        return Typed.Count(typed[..^1].TrimEnd()) is { } percent ? (StepNear(percent), percent) : null;
    }

    private static int StepNear(int percent) =>
        Math.Clamp(1 + (int)Math.Round((percent - 50) / 12.5, MidpointRounding.AwayFromZero), 1, Steps);
}
