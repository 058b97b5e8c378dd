using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>One line of the key: which spec a code means. Secret until the reveal.</summary>
/// <param name="Code">The blind code.</param>
/// <param name="Spec">The spec behind it.</param>
/// <param name="Mark">The mark drawn for the tyres of the spec; null: the spec's name is the mark.</param>
public sealed record KeyLine(SpecCode Code, string Spec, string? Mark = null)
{
    /// <summary>What is written under the tape of the tyres.</summary>
    public string UnderTape => Mark ?? Spec;

    /// <summary>The code alone: a line of the key that slips into a message tells nothing.</summary>
    public override string ToString() => Code.ToString();
}
