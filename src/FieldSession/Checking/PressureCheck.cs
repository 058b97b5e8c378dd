using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>
/// Cold pressures of the four tyres, held against the plan's target, left against right, and car against car, at 20 degC
/// where the tyres' temperature was typed.
/// </summary>
public sealed record PressureCheck() : CheckKind(
    "pressure",
    CheckingWords.PressureForm,
    [
        CheckValue.Of("fl", 50, 1000, needed: true), CheckValue.Of("fr", 50, 1000, needed: true),
        CheckValue.Of("rl", 50, 1000, needed: true), CheckValue.Of("rr", 50, 1000, needed: true),
        CheckValue.Of("at", -60, 90), CheckValue.Word("car"),
    ])
{
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
        return (answer, $"{words}; {(values.Has("at") ? "at 20 degC" : "as read, no temperature was typed")}");
    }

    /// <summary>The four pressures, front left, front right, rear left, rear right, kPa; at 20 degC where the temperature is known.</summary>
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
            parts.Add(Part(study, $"{axle} from target {new TyrePressure(target).In(study.Plan!.Units)}", kpa.Select(one => one - target).MaxBy(Math.Abs)));
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
        return off > limits.Of(FurtherLimits.PressureBlock) ? (CheckAnswer.Blocks, $"{words}, more than {In(limits.Of(FurtherLimits.PressureBlock))}")
            : off > limits.Of(FurtherLimits.PressureWarn) ? (CheckAnswer.Warns, $"{words}, more than {In(limits.Of(FurtherLimits.PressureWarn))}")
            : (CheckAnswer.Records, words);
    }
}
