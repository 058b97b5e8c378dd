using System.Collections.Immutable;

namespace FieldSession.Terminal.Demonstration;

/// <summary>A demo study: where its files lie in the program, and what its custodian and its mark readers knew.</summary>
/// <param name="Name">Name of its folder, and the word that calls it.</param>
/// <param name="Codes">The code of each spec of its list, the reference place first.</param>
/// <param name="RunsDriven">How many runs the interactive demo finds driven; the last one is left to whoever tries it.</param>
/// <param name="Passphrase">Opens its key file; a real one is known to the custodian only.</param>
/// <param name="MarkReaders">Who read the marks on the tyres.</param>
/// <param name="DrivenFiles">Its files of entry lines, in the order they were typed, before the evening's.</param>
internal sealed record DemoStudy(
    string Name, ImmutableArray<string> Codes, int RunsDriven, string Passphrase, ImmutableArray<string> MarkReaders, ImmutableArray<string> DrivenFiles)
{
    /// <summary>Every demo; the first is the one that opens where none is named.</summary>
    public static ImmutableArray<DemoStudy> All { get; } =
    [
        new("quillmere", ["417", "862"], 8, "quillmere custodian", ["Ro", "Ilse"], ["day.txt", "energy.txt"]),
        new("dunmarrow", ["158", "704", "391"], 6, "dunmarrow custodian", ["Bex", "Orla"], ["day.txt"]),
    ];

    /// <summary>The demo of a name; null: there is none.</summary>
    public static DemoStudy? Named(string name) => All.FirstOrDefault(demo => string.Equals(demo.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The text of one of its files, such as "plan.toml".</summary>
    public string Text(string file) => DemoFiles.Text($"{Name}/{file}");

    /// <summary>The lines of one of its files.</summary>
    public string[] Lines(string file) => DemoFiles.Lines($"{Name}/{file}");
}
