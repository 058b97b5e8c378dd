using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>One line of the key: which spec a code stands for. Secret until the reveal.</summary>
/// <param name="Code">The blind code.</param>
/// <param name="Spec">The spec behind it.</param>
public sealed record KeyLine(SpecCode Code, string Spec)
{
    /// <summary>The code alone: a line of the key that slips into a message tells nothing.</summary>
    public override string ToString() => Code.ToString();
}
