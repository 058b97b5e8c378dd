using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>How the report calls a code: by its spec's name where the reveal allows it, else by the code alone.</summary>
/// <param name="Key">The opened key; null: not open.</param>
public sealed record SpecNames(OpenedKey? Key)
{
    /// <summary>"STIFFENED (862)", with all codes of the spec where it was fitted several times; "862" while the name is withheld.</summary>
    public string Of(string code) => Key is { NamesAllowed: true } key && key.SpecOf(new SpecCode(code)) is { } spec
        ? $"{spec} ({string.Join(", ", key.CodesLike(new SpecCode(code)))})"
        : code;

    /// <summary>"STIFFENED", or "code 862" while the name is withheld.</summary>
    public string Plainly(string code) => Key is { NamesAllowed: true } key && key.SpecOf(new SpecCode(code)) is { } spec ? spec : $"code {code}";

    /// <summary>
    /// The code that the report compares with: the control where it may be named, else the reference of the order; where a spec has
    /// several codes, the one that <see cref="SpecsMerged"/> calls it by.
    /// </summary>
    public SpecCode? ReferenceIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Key is { NamesAllowed: true } key && (key.ControlCode ?? study.ReferenceCode) is { } reference
            ? key.CodesLike(reference)[0]
            : study.ReferenceCode;
    }
}
