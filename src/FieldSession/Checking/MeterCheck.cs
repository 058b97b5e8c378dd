using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The meter's settings: A-weighted, fast, the same all session. A change makes a new session.</summary>
public sealed record MeterCheck() : CheckKind(
    "meter",
    CheckingWords.MeterForm,
    [
        CheckValue.Word("weighting", needed: true), CheckValue.Word("time", needed: true), CheckValue.Of("class", 1, 2),
        CheckValue.Of("battery", 0, 100), CheckValue.Of("at", -60, 90), CheckValue.Word("range"), CheckValue.Word("place"),
    ])
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        List<(CheckAnswer, string)> parts = [Settings(study, values)];
        parts.AddRange(new[] { Cold(study, values), Battery(study, values) }.OfType<(CheckAnswer, string)>());
        return Joined(parts);
    }

    private (CheckAnswer, string) Settings(Study study, CheckValues values)
    {
        string now = In(values);
        bool hasRuns = study.SessionOn is { } session && study.LastRun?.Session == session.Number;
        if (hasRuns && SessionChecks.In(study, Name).FirstOrDefault() is { } first && In(new CheckValues(first.Values)) != now)
        {
            return (CheckAnswer.Blocks, CheckingWords.MeterChangedWithinSession(now));
        }

        bool isUsual = Typed.Is(values.Word("weighting")!, "a") && Typed.Is(values.Word("time")!, "f");
        return isUsual ? (CheckAnswer.Records, $"meter on {now}") : (CheckAnswer.Blocks, CheckingWords.MeterIsOnWrongSettings(now));
    }

    private static string In(CheckValues values) => $"{values.Word("weighting")} and {values.Word("time")}".ToUpperInvariant().Replace("AND", "and", StringComparison.Ordinal);

    private static (CheckAnswer, string)? Cold(Study study, CheckValues values)
    {
        if (values.Number("class") is not { } meterClass)
        {
            return null;
        }

        Limits limits = LimitsOf(study);
        bool isOne = meterClass < 2;
        double coldest = limits.Of(isOne ? FurtherLimits.MeterOneColdest : FurtherLimits.MeterTwoColdest);
        double warmest = limits.Of(isOne ? FurtherLimits.MeterOneWarmest : FurtherLimits.MeterTwoWarmest);
        string what = $"class {meterClass:0}";
        return values.Number("at") is { } at && (at < coldest || at > warmest)
            ? (CheckAnswer.Warns, CheckingWords.MeterOutsideItsTemperatures(what, new Temperature(at).In(UnitsOf(study)), new Temperature(coldest).In(UnitsOf(study)), new Temperature(warmest).In(UnitsOf(study))))
            : (CheckAnswer.Records, what);
    }

    private static (CheckAnswer, string)? Battery(Study study, CheckValues values)
    {
        double least = LimitsOf(study).Of(FurtherLimits.Battery);
        return values.Number("battery") is { } percent
            ? percent < least ? (CheckAnswer.Warns, CheckingWords.BatteryIsLow(percent, least)) : (CheckAnswer.Records, $"battery {percent:0.#} %")
            : null;
    }

    private static UnitSystem UnitsOf(Study study) => study.Plan?.Units ?? UnitSystem.Metric;
}
