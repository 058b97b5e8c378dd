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
