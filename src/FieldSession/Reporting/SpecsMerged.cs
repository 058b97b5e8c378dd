using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

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
            : day with { Levels = [.. day.Levels.Select(level => level with { Code = FirstLike(level.Code, key) })] };
    }

    /// <summary>The legs by spec; unchanged while the names are withheld.</summary>
    public static IReadOnlyList<MeasuredLeg> Of(IReadOnlyList<MeasuredLeg> legs, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(legs);
        return key is not { NamesAllowed: true } ? legs : [.. legs.Select(leg => leg with { Code = FirstLike(leg.Code, key) })];
    }

    private static string FirstLike(string code, OpenedKey key) => key.CodesLike(new SpecCode(code))[0].Digits;
}
