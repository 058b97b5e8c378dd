using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Which spec a code stood for.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The custodian's name of the spec.</param>
public sealed record CodedSpec(SpecCode Code, string Spec);
