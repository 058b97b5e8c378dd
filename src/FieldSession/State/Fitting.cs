using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>The codes that one fitting of the tyres drew, and what the custodian published of the key. Nothing in it tells who is who.</summary>
/// <param name="Codes">The codes by place: the first is R, the reference.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line, 64 hex digits; null: a paper key without commitment.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Fitting(ImmutableList<SpecCode> Codes, string? Commitment, LineMark Mark)
{
    /// <summary>The code at a place of the order; null where the place is beyond the codes.</summary>
    public SpecCode? At(Place place) => place.Index < Codes.Count ? Codes[place.Index] : null;
}
