using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>How the marks that were read on the tyres compare with the key. It names codes, no specs.</summary>
/// <param name="Differ">The codes whose mark is not the one in the key.</param>
/// <param name="NotRead">The driven codes whose mark was not read.</param>
/// <param name="ReadByTwo">Whether two different people read them.</param>
public sealed record MarkCheck(ImmutableList<SpecCode> Differ, ImmutableList<SpecCode> NotRead, bool ReadByTwo)
{
    /// <summary>Whether every mark was read by two people and is the one in the key.</summary>
    public bool Holds => Differ.IsEmpty && NotRead.IsEmpty && ReadByTwo;
}
