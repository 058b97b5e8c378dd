using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The meter's settings: A-weighted, fast, the same all session. A change makes a new session.</summary>
public sealed record MeterCheck()
    : CheckKind(
        "meter",
        CheckingWords.MeterForm,
        [
            CheckValue.Word("weighting", needed: true),
            CheckValue.Word("time", needed: true),
            CheckValue.Of("class", 1, 2),
            CheckValue.Of("battery", 0, 100),
            CheckValue.Of("at", -60, 90),
            CheckValue.Word("range"),
            CheckValue.Word("place"),
        ]
    )
{
    /// <inheritdoc/>
    protected override string ImperialForm => CheckingWords.MeterFormInFahrenheit;

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

    private static string In(CheckValues values) =>
        $"{values.Word("weighting")} and {values.Word("time")}".ToUpperInvariant().Replace("AND", "and", StringComparison.Ordinal);

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
            ? (
                CheckAnswer.Warns,
                CheckingWords.MeterOutsideItsTemperatures(
                    what,
                    new Temperature(at).In(UnitsOf(study)),
                    new Temperature(coldest).In(UnitsOf(study)),
                    new Temperature(warmest).In(UnitsOf(study))
                )
            )
            : (CheckAnswer.Records, what);
    }

    private static (CheckAnswer, string)? Battery(Study study, CheckValues values)
    {
        double least = LimitsOf(study).Of(FurtherLimits.Battery);
        return values.Number("battery") is { } percent
            ? percent < least
                ? (CheckAnswer.Warns, CheckingWords.BatteryIsLow(percent, least))
                : (CheckAnswer.Records, $"battery {percent:0.#} %")
            : null;
    }

    private static UnitSystem UnitsOf(Study study) => study.Plan?.Units ?? UnitSystem.Metric;
}

/// <summary>Mass of the car as it is driven, held against every mass noted before.</summary>
public sealed record MassCheck()
    : CheckKind("mass", CheckingWords.MassForm, [CheckValue.Of("mass", 300, 10_000, needed: true), CheckValue.Word("car")])
{
    /// <inheritdoc/>
    protected override string ImperialForm => CheckingWords.MassFormInPounds;

    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        double mass = values.Number("mass") ?? 0;
        double limit = LimitsOf(study).Of(FurtherLimits.Mass);
        string word = $"{mass:0.#} kg";
        double[] before =
        [
            .. study
                .Checks.Where(check => check.Name == Name)
                .Select(check => new CheckValues(check.Values).Number("mass"))
                .OfType<double>(),
        ];
        double difference = before.Select(other => Math.Abs(other - mass)).DefaultIfEmpty().Max();
        return before.Length == 0
            ? (CheckAnswer.Records, word)
            : Above(Math.Round(difference, 6), limit, CheckingWords.MassDiffers(word, difference), $"{limit:0.#} kg");
    }
}

/// <summary>Fuel or charge, percent of full, held against what was noted before in the session.</summary>
public sealed record ChargeCheck()
    : CheckKind("charge", CheckingWords.ChargeForm, [CheckValue.Of("percent", 0, 100, needed: true), CheckValue.Word("car")])
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        double percent = values.Number("percent") ?? 0;
        double limit = LimitsOf(study).Of(FurtherLimits.Charge);
        double[] before =
        [
            .. SessionChecks.In(study, Name).Select(check => new CheckValues(check.Values).Number("percent")).OfType<double>(),
        ];
        double difference = before.Select(other => Math.Abs(other - percent)).DefaultIfEmpty().Max();
        return before.Length == 0
            ? (CheckAnswer.Records, $"{percent:0.#} % of full")
            : Above(Math.Round(difference, 6), limit, CheckingWords.ChargeDiffers(percent, difference), $"{limit:0.#}");
    }
}

/// <summary>The checks that belong to the session that is open or begins next: those made since the last one was closed.</summary>
public static class SessionChecks
{
    /// <summary>The checks of a name in the session, in order.</summary>
    public static IEnumerable<CheckRecord> In(Study study, string name)
    {
        ArgumentNullException.ThrowIfNull(study);
        int began =
            study.Sessions.LastOrDefault(session => session.After is not null && study.Hand.TookOver(session.Opened))?.After?.Mark.Place
            ?? 0;
        return study.Checks.Where(check => check.Name == name && check.Mark.Place > began);
    }
}
