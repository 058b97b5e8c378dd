using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>Mass of the car as it is driven, held against every mass noted before.</summary>
public sealed record MassCheck() : CheckKind("mass", CheckingWords.MassForm, [CheckValue.Of("mass", 300, 10_000, needed: true), CheckValue.Word("car")])
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        double mass = values.Number("mass") ?? 0;
        double limit = LimitsOf(study).Of(FurtherLimits.Mass);
        string word = $"{mass:0.#} kg";
        double[] before = [.. study.Checks.Where(check => check.Name == Name).Select(check => new CheckValues(check.Values).Number("mass")).OfType<double>()];
        double difference = before.Select(other => Math.Abs(other - mass)).DefaultIfEmpty().Max();
        return before.Length == 0 ? (CheckAnswer.Records, word) : Above(Math.Round(difference, 6), limit, CheckingWords.MassDiffers(word, difference), $"{limit:0.#} kg");
    }
}

/// <summary>Fuel or charge, percent of full, held against what was noted before in the session.</summary>
public sealed record ChargeCheck() : CheckKind("charge", CheckingWords.ChargeForm, [CheckValue.Of("percent", 0, 100, needed: true), CheckValue.Word("car")])
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        double percent = values.Number("percent") ?? 0;
        double limit = LimitsOf(study).Of(FurtherLimits.Charge);
        double[] before = [.. SessionChecks.In(study, Name).Select(check => new CheckValues(check.Values).Number("percent")).OfType<double>()];
        double difference = before.Select(other => Math.Abs(other - percent)).DefaultIfEmpty().Max();
        return before.Length == 0
            ? (CheckAnswer.Records, $"{percent:0.#} % of full")
            : Above(Math.Round(difference, 6), limit, CheckingWords.ChargeDiffers(percent, difference), $"{limit:0.#}");
    }
}
