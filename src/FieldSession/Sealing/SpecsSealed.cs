using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>
/// The custodian has drawn the codes of a fitting and keeps the key. The study learns the codes by place and the
/// commitment; it does not learn which spec is which. After a re-fit new codes are drawn, so that nobody carries a memory
/// over; only the keys tie the codes of two fittings together.
/// </summary>
/// <param name="Codes">The codes by place: the first is R, the reference.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line; null: a paper key.</param>
public sealed record SpecsSealed(ImmutableList<SpecCode> Codes, string? Commitment) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ObjectionNow(study) ?? ObjectionToCodes(study);

    /// <summary>What stands against sealing a fitting now, whatever its codes are; null: nothing.</summary>
    public static Objection? ObjectionNow(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? study switch
        {
            { RunOn: { } run } => new Objection($"run {run.Number} is on", "seal the new fitting at the next stop"),
            { Fitting: { } fitting } when !study.DrivenCodes.Any(fitting.Codes.Contains) => new Objection(
                "the study is sealed already, and none of its codes has been driven", "its codes stand; drive them, or start a new study"),
            { Fittings.Count: 0, Runs.Count: > 0 } => new Objection(
                "runs have been driven without sealed codes", "start a new study to drive blind"),
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
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string codes = string.Join(", ", Codes.OrderBy(c => c.Digits, StringComparer.Ordinal));
        string next = after.CodeAsked is { } asked ? $"; the order goes on with {asked}" : "";
        return new Echo(after.Fittings.Count == 1 ? $"sealed: codes {codes}" : $"sealed: fitting {after.Fittings.Count} has the new codes {codes}{next}");
    }

    private Objection? ObjectionToCodes(Study study)
    {
        if (Codes.Count != study.Plan!.SpecCount)
        {
            return new Objection($"{Codes.Count} codes were drawn, the plan has {study.Plan.SpecCount} specs", "draw one code for each spec");
        }

        SpecCode[] earlier = [.. study.Codes];
        return Codes.Any(code => earlier.Any(other => !CodeLot.Differ(code, other)))
            ? new Objection("a code is like one of an earlier fitting", "draw codes that differ from all earlier ones in two digits")
            : null;
    }
}
