using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>What two people read under the tape of the tyres that were driven as a code.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The spec name found on the tyres.</param>
public sealed record MarkRead(SpecCode Code, string Spec);
