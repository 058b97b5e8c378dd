using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>Contents page of the checks with typed values, in the order of a morning.</summary>
public static class CheckKinds
{
    /// <summary>Every kind.</summary>
    public static ImmutableArray<CheckKind> All { get; } =
    [new TyresCheck(), new PressureCheck(), new MassCheck(), new ChargeCheck(), new MeterCheck(), new WarmUpCheck(), new SpeedCheck()];

    /// <summary>The kind of a name; null: there is none.</summary>
    public static CheckKind? Of(string name) => All.FirstOrDefault(kind => Journal.Typed.Is(kind.Name, name));
}

/// <summary>
/// The speed by satellite on the last reading's segment. A speedometer shows up to a tenth and 4 km/h more than the truth
/// (UN Regulation 39, paragraph 5.3), so only the satellite's counts. Far off the plan, the reading is flagged.
/// </summary>
public sealed record SpeedCheck() : CheckKind("speed", "check speed 81.4", [CheckValue.Of("speed", 1, Speed.HighestKmh, needed: true)])
{
    /// <inheritdoc/>
    protected override string ImperialForm => "check speed 50.6";

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.LastRun?.LastReading is null
            ? new Objection(CheckingWords.NothingHasBeenReadYet, CheckingWords.ReadingBeforeSpeed)
            : null;
    }

    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        Limits limits = LimitsOf(study);
        UnitSystem units = study.Plan?.Units ?? UnitSystem.Metric;
        string words =
            $"{new Speed(values.Number("speed") ?? 0).In(units)} on {Segment(study)?.Name}, planned {Segment(study)?.Speed.In(units)}";
        double off = OffKmh(study, values);
        return off > limits.Of(FurtherLimits.SpeedFlag) ? (CheckAnswer.Warns, CheckingWords.ReadingSpoiltBySpeed(words))
            : off > limits.Of(FurtherLimits.SpeedWarn) ? (CheckAnswer.Warns, words)
            : (CheckAnswer.Records, words);
    }

    /// <inheritdoc/>
    public override Study EffectOn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        bool isFar = OffKmh(study, values) > LimitsOf(study).Of(FurtherLimits.SpeedFlag);
        if (!isFar || study.LastRun is not { LastReading: { Spoilt: null } reading } run)
        {
            return study;
        }

        bool isLate = !run.Passages[^1].Equals(reading);
        Reading spoilt = reading with
        {
            Spoilt = new Spoiling(SpoiltCause.Speed, $"{values.Number("speed"):0.#} km/h by satellite", isLate),
        };
        return study.WithLastRun(run with { Passages = run.Passages.Replace(reading, spoilt) });
    }

    private static Segment? Segment(Study study) =>
        study.LastRun?.LastReading is { } reading ? study.Plan?.Route[reading.Segment - 1] : null;

    private static double OffKmh(Study study, CheckValues values) =>
        Math.Round(Math.Abs((values.Number("speed") ?? 0) - (Segment(study)?.Speed.Kmh ?? 0)), 6);
}

/// <summary>How long the tyres were warmed up at test speed before the session's first run.</summary>
public sealed record WarmUpCheck()
    : CheckKind("warm-up", CheckingWords.WarmUpForm, [CheckValue.Of("min", 0, 600), CheckValue.Of("km", 0, 1000)])
{
    /// <inheritdoc/>
    protected override string ImperialForm => CheckingWords.WarmUpFormInMiles;

    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Limits limits = LimitsOf(study);
        List<(CheckAnswer, string)> parts = [];
        foreach ((string unit, Limit limit) in new[] { ("min", FurtherLimits.WarmUpMinutes), ("km", FurtherLimits.WarmUpKm) })
        {
            double least = limits.Of(limit);
            if (values.Number(unit) is { } driven)
            {
                parts.Add(
                    driven < least
                        ? (CheckAnswer.Warns, CheckingWords.WarmedUpTooLittle(In(driven, unit, study), In(least, unit, study)))
                        : (CheckAnswer.Records, CheckingWords.WarmedUpFor(In(driven, unit, study)))
                );
            }
        }

        return Joined(parts);
    }

    private static string In(double amount, string unit, Study study) =>
        unit == "km" ? Distance.FromKilometres(amount).OnTheRoadIn(study.Plan?.Units ?? UnitSystem.Metric) : $"{amount:0.#} {unit}";
}

/// <summary>
/// How unlike the sets are, beside what is compared. The custodian measures every set and tells only the largest difference:
/// depth, build week or hardness of a code would tell the crew which set is the odd one, and what no file holds nobody reads.
/// The values of each set stay on the custodian's sheet and are added as notes after the reveal.
/// </summary>
public sealed record TyresCheck()
    : CheckKind(
        "tyres",
        CheckingWords.TyresForm,
        [
            CheckValue.Of("tread", 0, 20),
            CheckValue.Of("weeks", 0, 1000),
            CheckValue.Of("shore", 0, 100),
            CheckValue.Of("run-in", 0, 200_000),
        ]
    )
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Limits limits = LimitsOf(study);
        List<(CheckAnswer, string)> parts = [];
        foreach (
            (string name, Limit limit, string what, string unit) in new[]
            {
                ("tread", FurtherLimits.Tread, CheckingWords.TreadDepthDiffersBy, "mm"),
                ("weeks", FurtherLimits.Weeks, CheckingWords.BuildDatesDifferBy, "weeks"),
                ("shore", FurtherLimits.Hardness, CheckingWords.HardnessDiffersBy, "Shore A"),
            }
        )
        {
            if (values.Number(name) is { } difference)
            {
                parts.Add(Above(difference, limits.Of(limit), $"{what} {difference:0.##} {unit}", $"{limits.Of(limit):0.##} {unit}"));
            }
        }

        if (values.Number("run-in") is { } km)
        {
            double least = limits.Of(FurtherLimits.RunIn);
            parts.Add(
                (
                    km < least ? CheckAnswer.Warns : CheckAnswer.Records,
                    CheckingWords.RunInForKm(km, km < least ? CheckingWords.AndLessThanKm(least) : "")
                )
            );
        }

        return Joined(parts);
    }
}

/// <summary>
/// Cold pressures of the four tyres, held against the plan's target, left against right, and car against car, at 20 degC
/// where the tyres' temperature was typed.
/// </summary>
public sealed record PressureCheck()
    : CheckKind(
        "pressure",
        CheckingWords.PressureForm,
        [
            CheckValue.Of("fl", 50, 1000, needed: true),
            CheckValue.Of("fr", 50, 1000, needed: true),
            CheckValue.Of("rl", 50, 1000, needed: true),
            CheckValue.Of("rr", 50, 1000, needed: true),
            CheckValue.Of("at", -60, 90),
            CheckValue.Word("car"),
        ]
    )
{
    /// <inheritdoc/>
    protected override string ImperialForm => CheckingWords.PressureFormInPsi;

    private const string Wheels = CheckingWords.NamesOfWheels;

    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        double[] kpa = AtReference(values);
        List<(CheckAnswer, string)> parts =
        [
            Part(study, CheckingWords.FrontLeftFromRight, kpa[0] - kpa[1]),
            Part(study, CheckingWords.RearLeftFromRight, kpa[2] - kpa[3]),
        ];
        AddTarget(parts, study, "front", study.Plan?.PressureFrontKpa, kpa[..2]);
        AddTarget(parts, study, "rear", study.Plan?.PressureRearKpa, kpa[2..]);
        if (study.Checks.LastOrDefault(check => check.Name == Name && OtherCar(check, values)) is { } other)
        {
            double[] theirs = AtReference(new CheckValues(other.Values));
            parts.Add(Part(study, CheckingWords.CarFromOtherCar, kpa.Zip(theirs, (one, two) => one - two).MaxBy(Math.Abs)));
        }

        (CheckAnswer answer, string words) = Joined(parts);
        string reference = new Temperature(TyrePressure.ReferenceCelsius).In(study.Plan?.Units ?? UnitSystem.Metric);
        return (answer, $"{words}; {(values.Has("at") ? $"at {reference}" : "as read, no temperature was typed")}");
    }

    /// <summary>
    /// The four pressures, front left, front right, rear left, rear right, kPa; at 20 degC where the temperature is known.
    /// </summary>
    public static double[] AtReference(CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Temperature reference = new(TyrePressure.ReferenceCelsius);
        Temperature at = values.Number("at") is { } celsius ? new Temperature(celsius) : reference;
        return [.. Wheels.Split(' ').Select(wheel => new TyrePressure(values.Number(wheel) ?? 0).At(at, reference).Kpa)];
    }

    private static bool OtherCar(CheckRecord check, CheckValues values) => check.Values.GetValueOrDefault("car") != values.Word("car");

    private static void AddTarget(List<(CheckAnswer, string)> parts, Study study, string axle, double? targetKpa, double[] kpa)
    {
        if (targetKpa is { } target)
        {
            parts.Add(
                Part(
                    study,
                    $"{axle} from target {new TyrePressure(target).In(study.Plan!.Units)}",
                    kpa.Select(one => one - target).MaxBy(Math.Abs)
                )
            );
        }
    }

    private static (CheckAnswer Answer, string Words) Part(Study study, string what, double differenceKpa)
    {
        const double Rounding = 1e-9;
        Limits limits = LimitsOf(study);
        UnitSystem units = study.Plan?.Units ?? UnitSystem.Metric;
        string In(double kpa) => new TyrePressure(kpa).In(units);
        string words = $"{what} {In(Math.Round(differenceKpa, 6))}";
        double off = Math.Abs(differenceKpa) - Rounding;
        return off > limits.Of(FurtherLimits.PressureBlock)
                ? (CheckAnswer.Blocks, $"{words}, more than {In(limits.Of(FurtherLimits.PressureBlock))}")
            : off > limits.Of(FurtherLimits.PressureWarn)
                ? (CheckAnswer.Warns, $"{words}, more than {In(limits.Of(FurtherLimits.PressureWarn))}")
            : (CheckAnswer.Records, words);
    }
}
