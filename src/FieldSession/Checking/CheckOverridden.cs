using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The crew goes on although a blocking check rules it out. Check and reason are in the report.</summary>
/// <param name="Check">Name of the check, as the refusal gave it.</param>
/// <param name="Reason">Why, in the crew's words.</param>
public sealed record CheckOverridden(string Check, string Reason) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Gate.WhileDataAreOpen(study) is { } shut)
        {
            return shut;
        }

        IEnumerable<Objection> blocking = RunChecks
            .AgainstNextRun(study)
            .Concat(RunChecks.AgainstPredicting(study) is { } against ? [against] : []);
        string[] names = [.. blocking.Select(o => o.Check!)];
        return names.Contains(Check)
            ? null
            : new Objection(
                CheckingWords.CheckDoesNotBlockNow(Check),
                names.Length == 0 ? CheckingWords.GoOnWithoutOverride : CheckingWords.BlockingChecksAre(string.Join(", ", names))
            );
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Override one = new(Check, Reason, (study.LastRun?.Number ?? 0) + 1, mark);
        return (study with { Overrides = study.Overrides.Add(one) }).Undoably(study, mark, $"override {Check}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(CheckingWords.CheckOverridden(Check, Reason));
}

/// <summary>Reads <c>override CHECK words</c>.</summary>
public static class OverrideText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "override"))
        {
            return null;
        }

        if (words.Length < 3)
        {
            return Parsed.No(CheckingWords.OverrideNamesCheckAndReason, CheckingWords.OverrideForm);
        }

        return Parsed.As(new CheckOverridden(words[1].ToLowerInvariant(), string.Join(' ', words.Skip(2))));
    }
}
