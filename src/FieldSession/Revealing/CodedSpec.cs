using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Which spec a code meant.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The custodian's name of the spec.</param>
/// <param name="Mark">The mark drawn for its tyres; null: the name is the mark.</param>
public sealed record CodedSpec(SpecCode Code, string Spec, string? Mark = null)
{
    /// <summary>What has to be read under the tape.</summary>
    public string UnderTape => Mark ?? Spec;
}
