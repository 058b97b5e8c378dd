namespace FieldSession.State;

/// <summary>The blind name of a spec: a random three-digit number. A code is never called by anything else before the reveal.</summary>
/// <param name="Digits">Three digits.</param>
public readonly record struct SpecCode(string Digits)
{
    /// <summary>Reads a code; null where the text is no three-digit number.</summary>
    public static SpecCode? Parse(string text) =>
        text is { Length: 3 } && text.All(char.IsAsciiDigit) ? new SpecCode(text) : null;

    /// <inheritdoc/>
    public override string ToString() => Digits;
}
