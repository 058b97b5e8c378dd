using System.Collections.Immutable;
using System.Reflection;
using FieldSession.Journal;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Demonstration;

/// <summary>Where a demo's files lie: in the folder that was asked for, or in a new one of its own.</summary>
/// <param name="Demo">The demo.</param>
/// <param name="Folder">The folder.</param>
/// <param name="IsKept">Whether it stays when a replay is over.</param>
internal sealed record DemoFolder(DemoStudy Demo, string Folder, bool IsKept)
{
    /// <summary>Whether the driven runs were recorded as well.</summary>
    public bool IsRecorded { get; init; }

    /// <summary>The demo's study file.</summary>
    public string Study => Path.Combine(Folder, $"{Demo.Name}.study");

    /// <summary>The demo custodian's key file.</summary>
    public string Key => Path.Combine(Folder, $"{Demo.Name}.key");

    /// <summary>The folder of the demo's recordings.</summary>
    public string Recordings => Path.Combine(Folder, "recordings");

    /// <summary>What is said when its screens are left: where it lies, and what opens its key file.</summary>
    public string Farewell => DemoWords.WhereDemoLies(Folder, Demo.Passphrase);

    /// <summary>What opens its key, for the screen that asks.</summary>
    public string OpensKey => DemoWords.WhatOpensDemo(Key, Demo.Passphrase);

    /// <summary>The folder asked for, or a new one under the machine's folder for temporary files.</summary>
    public static DemoFolder At(DemoStudy demo, string? asked, Surroundings outside)
    {
        string folder = asked ?? Path.Combine(Path.GetTempPath(), $"fieldsession-demo-{Convert.ToHexStringLower(outside.Lot.Bytes(6))}");
        Directory.CreateDirectory(folder);
        return new DemoFolder(demo, folder, asked is not null);
    }

    /// <summary>Takes away a folder that nobody asked for.</summary>
    public void Leave()
    {
        if (!IsKept)
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}

/// <summary>The demo's own files, carried inside the program.</summary>
internal static class DemoFiles
{
    /// <summary>The text of a demo file, such as "quillmere/plan.toml".</summary>
    /// <exception cref="FileNotFoundException">The program was built without it.</exception>
    public static string Text(string name)
    {
        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream($"demo/{name}")
            ?? throw new FileNotFoundException(DemoWords.FileNotInProgram(name), name);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The lines of a demo file.</summary>
    public static string[] Lines(string name) => Text(name).Split('\n', StringSplitOptions.TrimEntries);
}

/// <summary>A demo study: where its files lie in the program, and what its custodian and its mark readers knew.</summary>
/// <param name="Name">Name of its folder, and the word that calls it.</param>
/// <param name="Codes">The code of each spec of its list, the reference place first.</param>
/// <param name="RunsDriven">How many runs the interactive demo finds driven; the last one is left to whoever tries it.</param>
/// <param name="Passphrase">Opens its key file; a real one is known to the custodian only.</param>
/// <param name="MarkReaders">Who read the marks on the tyres.</param>
/// <param name="DrivenFiles">Its files of entry lines, in the order they were typed, before the evening's.</param>
internal sealed record DemoStudy(
    string Name,
    ImmutableArray<string> Codes,
    int RunsDriven,
    string Passphrase,
    ImmutableArray<string> MarkReaders,
    ImmutableArray<string> DrivenFiles
)
{
    /// <summary>Every demo; the first is the one that opens where none is named.</summary>
    public static ImmutableArray<DemoStudy> All { get; } =
    [
        new("quillmere", ["417", "862"], 8, "quillmere custodian", ["Ro", "Ilse"], ["day.txt", "energy.txt"]),
        new("dunmarrow", ["158", "704", "391"], 6, "dunmarrow custodian", ["Bex", "Orla"], ["day.txt"]),
    ];

    /// <summary>The demo of a name; null: there is none.</summary>
    public static DemoStudy? Named(string name) =>
        All.FirstOrDefault(demo => string.Equals(demo.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The text of one of its files, such as "plan.toml".</summary>
    public string Text(string file) => DemoFiles.Text($"{Name}/{file}");

    /// <summary>The lines of one of its files.</summary>
    public string[] Lines(string file) => DemoFiles.Lines($"{Name}/{file}");
}

/// <summary>What the demo says.</summary>
internal static class DemoWords
{
    public static string PlanIsWrong(string problems) => $"the demo's plan is wrong: {problems}";

    public static string LineNotTaken(string line, Outcome outcome) =>
        $"the demo's line '{line}' was not taken: {ShellWords.NotWritten(outcome)}";

    public static string SpecListIsWrong(Objection? refusal) => $"the demo's spec list is wrong: {refusal}";

    public static string MakesRecordings(string folder) => $"making the recordings of the runs in {folder}; it takes a while";

    public static string FileNotInProgram(string name) => $"the demo file {name} is not in the program";

    public static string WhatOpensDemo(string key, string passphrase) =>
        $"Demo: the key file is {key}, its passphrase '{passphrase}'. Marks: 'fieldsession help first-day'.";

    public static string WhereDemoLies(string folder, string passphrase) =>
        $"the demo is in {folder}; its key file opens with the passphrase '{passphrase}'";
}
