using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>A check was made, with the values that were read: never a tick. Its answer is worked out again from them.</summary>
/// <param name="Check">Name of the check.</param>
/// <param name="Values">What was typed, by name, in metric units as the plan holds them.</param>
public sealed record CheckTyped(string Check, ImmutableSortedDictionary<string, string> Values) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study) ?? Kind?.ObjectionIn(study, Read);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Kind is not { } kind)
        {
            return study;
        }

        (CheckAnswer answer, string words) = kind.AnswerIn(study, Read);
        CheckRecord record = new(Check, Values, answer, words, study.LastRun?.Number ?? 0, mark);
        Study marked = kind.EffectOn(study, Read);
        return (marked with { Checks = study.Checks.Add(record) }).Undoably(study, mark, $"check {Check}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        CheckRecord? record = after.Checks.LastOrDefault();
        return record?.Answer switch
        {
            CheckAnswer.Blocks => new Echo($"check {Check}: {record.Words}", CheckingWords.NoRunStartsSo(RunChecks.InsteadOf(Check))),
            CheckAnswer.Warns => new Echo(CheckingWords.CheckWarns(Check, record)),
            _ => new Echo($"check {Check}: {record?.Words}"),
        };
    }

    private CheckKind? Kind => CheckKinds.Of(Check);

    private CheckValues Read => new(Values);
}
