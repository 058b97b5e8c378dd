using System.Collections.Immutable;
using System.Globalization;

namespace FieldSession.State;

/// <summary>
/// The codes that one fitting of the tyres drew, and what the custodian published of the key. Nothing in it tells who is who.
/// </summary>
/// <param name="Codes">The codes by place: the first is R, the reference.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line, 64 hex digits; null: a paper key without commitment.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Fitting(ImmutableList<SpecCode> Codes, string? Commitment, LineMark Mark)
{
    /// <summary>The code at a place of the order; null where the place is beyond the codes.</summary>
    public SpecCode? At(Place place) => place.Index < Codes.Count ? Codes[place.Index] : null;
}

/// <summary>
/// A place in the order of runs: R, the reference code that brackets the others, or the number of another code. Which
/// code takes which place is drawn by lot at sealing.
/// </summary>
/// <param name="Index">0 for R, else 1, 2, ...</param>
public readonly record struct Place(int Index)
{
    /// <summary>The reference place.</summary>
    public static Place Reference => new(0);

    /// <summary>Whether this is the reference place.</summary>
    public bool IsReference => Index == 0;

    /// <summary>"R", "1", "2", ...</summary>
    public override string ToString() => IsReference ? "R" : Index.ToString(CultureInfo.InvariantCulture);
}
