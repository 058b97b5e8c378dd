using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>
/// The custodian has drawn the codes and keeps the key. The study learns the codes by place and the commitment; it
/// does not learn which spec is which.
/// </summary>
/// <param name="Codes">The codes by place: the first is R, the reference.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line; null: a paper key.</param>
public sealed record SpecsSealed(ImmutableList<SpecCode> Codes, string? Commitment) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study switch
        {
            { Plan: null } => new Objection("the study has no plan", "make it with 'start' first"),
            { Fittings.Count: > 0 } => new Objection("the study is sealed already", "its codes stand; drive it"),
            { Runs.Count: > 0 } => new Objection("runs have been driven without sealed codes", "start a new study to drive blind"),
            _ => null,
        };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Fittings = study.Fittings.Add(new Fitting(Codes, Commitment, mark)), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(
        $"sealed: codes {string.Join(", ", Codes.OrderBy(c => c.Digits, StringComparer.Ordinal))}");
}
