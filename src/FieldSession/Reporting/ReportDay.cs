using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the sections of a report share.</summary>
/// <param name="Study">The study.</param>
/// <param name="Names">How codes are called.</param>
/// <param name="Day">The readings.</param>
/// <param name="Comparison">What they say.</param>
/// <param name="Ear">What the ear says.</param>
public sealed record ReportDay(Study Study, SpecNames Names, MeasuredDay Day, Comparison Comparison, EarFindings Ear)
{
    /// <summary>What the recordings say; null: there are none, or the ring is still covered.</summary>
    public RingFinding? Ring { get; init; }

    /// <summary>The readings by a question that was amended after a comparison could be seen; null: it was not.</summary>
    public Comparison? ChosenAfter { get; init; }
}

/// <summary>How the report calls a code: by its spec's name where the reveal allows it, else by the code alone.</summary>
/// <param name="Key">The opened key; null: not open.</param>
public sealed record SpecNames(OpenedKey? Key)
{
    /// <summary>
    /// "STIFFENED (862)", with all codes of the spec where it was fitted several times; "862" while the name is withheld.
    /// </summary>
    public string Of(string code) =>
        Key is { NamesAllowed: true } key && key.SpecOf(new SpecCode(code)) is { } spec
            ? $"{spec} ({string.Join(", ", key.CodesLike(new SpecCode(code)))})"
            : code;

    /// <summary>"STIFFENED", or "code 862" while the name is withheld.</summary>
    public string Plainly(string code) =>
        Key is { NamesAllowed: true } key && key.SpecOf(new SpecCode(code)) is { } spec ? spec : $"code {code}";

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

/// <summary>
/// The readings and legs of a study after the reveal: codes of different fittings that meant one spec become one, called by the
/// spec's first code, and are compared together.
/// </summary>
public static class SpecsMerged
{
    /// <summary>The day by spec; unchanged while the names are withheld, because then nobody knows which codes belong together.</summary>
    public static MeasuredDay Of(MeasuredDay day, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(day);
        return key is not { NamesAllowed: true }
            ? day
            : day with
            {
                Levels = [.. day.Levels.Select(level => level with { Code = FirstLike(level.Code, key) })],
            };
    }

    /// <summary>The legs by spec; unchanged while the names are withheld.</summary>
    public static IReadOnlyList<MeasuredLeg> Of(IReadOnlyList<MeasuredLeg> legs, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(legs);
        return key is not { NamesAllowed: true } ? legs : [.. legs.Select(leg => leg with { Code = FirstLike(leg.Code, key) })];
    }

    private static string FirstLike(string code, OpenedKey key) => key.CodesLike(new SpecCode(code))[0].Digits;
}
