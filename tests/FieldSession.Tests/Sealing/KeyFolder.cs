using System.Text;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Sealing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Sealing;

/// <summary>A folder of the custodian that vanishes after the test, and a key file with a quick stretching of the passphrase.</summary>
internal sealed class KeyFolder : IDisposable
{
    public const string Passphrase = "four quiet words here";

    private readonly string _path = Directory.CreateTempSubdirectory("fieldsession-key").FullName;

    public static KeySheet Key =>
        new(
            "QW-0114",
            [new KeyLine(new SpecCode("862"), "STIFFENED"), new KeyLine(new SpecCode("417"), "STANDARD")],
            "STANDARD",
            "8f1d6c0b2a4e49579d03c7e1b6a85f42"
        );

    public KeyFile Quick { get; } = new(new SeededLot(5), QuickStretch.Derive);

    public string[] Entries => Directory.GetFileSystemEntries(_path);

    public string Here(string name) => Path.Combine(_path, name);

    public string Seal(string name, KeySheet key)
    {
        Assert.Null(Quick.Seal(Here(name), key, Passphrase));
        return Here(name);
    }

    public KeyOpening OpenBytes(byte[] bytes)
    {
        File.WriteAllBytes(Here("edited.key"), bytes);
        return Quick.Open(Here("edited.key"), "QW-0114", null, Passphrase);
    }

    public KeyOpening OpenText(string text) => OpenBytes(Encoding.UTF8.GetBytes(text));

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
