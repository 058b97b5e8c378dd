using System.Collections.Immutable;
using System.Reflection;
using FieldSession.Measures;
using FieldSession.Sealing;

namespace FieldSession.Terminal.Custodian;

/// <summary>Words drawn by lot for a passphrase, out of a public list of 7776 (docs/licences.md).</summary>
/// <param name="Words">The words.</param>
/// <param name="Bits">How many bits somebody would have to guess.</param>
internal sealed record OfferedWords(ImmutableArray<string> Words, double Bits)
{
    private const int HowMany = 4;
    private const string ListName = "words.txt";

    /// <summary>Four words by lot.</summary>
    public static OfferedWords Drawn(ILot lot)
    {
        string[] list = List();
        return new OfferedWords(
            [.. Enumerable.Range(0, HowMany).Select(_ => list[lot.Below(list.Length)])], PassphraseStrength.BitsOfWords(HowMany, list.Length));
    }

    /// <summary>The list.</summary>
    public static string[] List()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(ListName)
            ?? throw new FileNotFoundException($"{ListName} is not in the program", ListName);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', Words);
}
