using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>How long the tyres were warmed up at test speed before the session's first run.</summary>
public sealed record WarmUpCheck() : CheckKind("warm-up", CheckingWords.WarmUpForm, [CheckValue.Of("min", 0, 600), CheckValue.Of("km", 0, 1000)])
{
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
                parts.Add(driven < least
                    ? (CheckAnswer.Warns, CheckingWords.WarmedUpTooLittle(driven, unit, least))
                    : (CheckAnswer.Records, CheckingWords.WarmedUpFor(driven, unit)));
            }
        }

        return Joined(parts);
    }
}
