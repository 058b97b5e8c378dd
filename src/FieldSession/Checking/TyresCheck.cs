using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>
/// How unlike the sets are, beside what is compared. The custodian measures every set and tells only the largest difference:
/// depth, build week or hardness of a code would tell the crew which set is the odd one, and what no file holds nobody reads.
/// The values of each set stay on the custodian's sheet and are added as notes after the reveal.
/// </summary>
public sealed record TyresCheck() : CheckKind(
    "tyres",
    CheckingWords.TyresForm,
    [CheckValue.Of("tread", 0, 20), CheckValue.Of("weeks", 0, 1000), CheckValue.Of("shore", 0, 100), CheckValue.Of("run-in", 0, 200_000)])
{
    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Limits limits = LimitsOf(study);
        List<(CheckAnswer, string)> parts = [];
        foreach ((string name, Limit limit, string what, string unit) in new[]
        {
            ("tread", FurtherLimits.Tread, CheckingWords.TreadDepthDiffersBy, "mm"),
            ("weeks", FurtherLimits.Weeks, CheckingWords.BuildDatesDifferBy, "weeks"),
            ("shore", FurtherLimits.Hardness, CheckingWords.HardnessDiffersBy, "Shore A"),
        })
        {
            if (values.Number(name) is { } difference)
            {
                parts.Add(Above(difference, limits.Of(limit), $"{what} {difference:0.##} {unit}", $"{limits.Of(limit):0.##} {unit}"));
            }
        }

        if (values.Number("run-in") is { } km)
        {
            double least = limits.Of(FurtherLimits.RunIn);
            parts.Add((km < least ? CheckAnswer.Warns : CheckAnswer.Records, CheckingWords.RunInForKm(km, km < least ? CheckingWords.AndLessThanKm(least) : "")));
        }

        return Joined(parts);
    }
}
