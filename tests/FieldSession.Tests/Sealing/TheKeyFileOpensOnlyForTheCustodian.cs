using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Sealing;

namespace FieldSession.Tests.Sealing;

public sealed class TheKeyFileOpensOnlyForTheCustodian : IDisposable
{
    private readonly KeyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void With_the_real_stretching_the_key_comes_back_and_a_wrong_passphrase_does_not_open_it()
    {
        KeyFile file = new(new SystemLot(), Pbkdf2Stretch.Derive);
        string path = _folder.Here("a.key");
        Assert.Null(file.Seal(path, KeyFolder.Key, KeyFolder.Passphrase));
        KeyOpening opened = file.Open(path, "QW-0114", Commitment.Of(KeyFolder.Key), KeyFolder.Passphrase);
        Assert.Equal(Commitment.CanonicalLine(KeyFolder.Key), Commitment.CanonicalLine(opened.Key!));
        Assert.Equal(["862", "417"], opened.Key!.Codes.Select(code => code.Digits));
        Assert.Equal("STANDARD", opened.Key.ControlSpec);
        Assert.Equal(KeyFault.WrongPassphraseOrChanged, file.Open(path, "QW-0114", null, KeyFolder.Passphrase + " ").Fault);
    }

    [Fact]
    public void The_file_holds_no_spec_name_and_is_for_its_owner_alone()
    {
        string path = _folder.Seal("a.key", KeyFolder.Key);
        string text = File.ReadAllText(path);
        Assert.DoesNotContain("STANDARD", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("STIFF", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(Convert.ToBase64String("STANDARD"u8.ToArray())[..10], text);
        Assert.DoesNotContain(KeyFolder.Key.Nonce, text);
        Assert.Equal([path], _folder.Entries);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Fact]
    public void Short_and_long_names_give_files_of_one_length()
    {
        string wide = string.Concat(Enumerable.Repeat("🛞", 59));
        KeySheet longest = new(
            "QW-0114",
            Enumerable.Range(0, 9).Select(n => new KeyLine(new SpecCode($"{n + 1}{n}5"), wide + n)),
            wide + 3,
            KeyFolder.Key.Nonce
        );
        string one = _folder.Seal("short.key", KeyFolder.Key);
        string other = _folder.Seal("long.key", longest);
        Assert.Equal(new FileInfo(one).Length, new FileInfo(other).Length);
        Assert.Equal(Commitment.Of(longest), Commitment.Of(_folder.Quick.Open(other, "QW-0114", null, KeyFolder.Passphrase).Key!));
    }

    [Fact]
    public void The_key_file_of_another_study_or_of_another_sealing_is_told_apart()
    {
        string path = _folder.Seal("a.key", KeyFolder.Key);
        KeyOpening study = _folder.Quick.Open(path, "DM-0207", null, KeyFolder.Passphrase);
        KeyOpening sealing = _folder.Quick.Open(path, "QW-0114", new string('0', 64), KeyFolder.Passphrase);
        Assert.Equal(KeyFault.AnotherStudy, study.Fault);
        Assert.Equal(KeyFault.AnotherStudy, sealing.Fault);
        Assert.Contains("another sealing", sealing.Words);
    }

    [Fact]
    public void A_missing_file_a_folder_and_a_huge_file_are_told_apart()
    {
        Assert.Equal(KeyFault.NoSuchFile, Fault(_folder.Here("none.key")));
        Assert.Equal(KeyFault.NoSuchFile, Fault(_folder.Here("no/folder.key")));
        Assert.Equal(KeyFault.Unreadable, Fault(_folder.Here("")));
        Assert.Equal(KeyFault.Damaged, _folder.OpenBytes(new byte[100_000]).Fault);
    }

    [Theory]
    [InlineData("")]
    [InlineData("seven77")]
    [InlineData("              ")]
    public void A_short_passphrase_is_refused_and_nothing_is_written(string passphrase)
    {
        Objection? no = _folder.Quick.Seal(_folder.Here("a.key"), KeyFolder.Key, passphrase);
        Assert.Contains("8 characters", $"{no}");
        Assert.Empty(_folder.Entries);
    }

    [Fact]
    public void A_file_that_is_there_is_never_written_over()
    {
        File.WriteAllText(_folder.Here("a.key"), "precious");
        Assert.Contains("never written over", $"{_folder.Quick.Seal(_folder.Here("a.key"), KeyFolder.Key, KeyFolder.Passphrase)}");
        Assert.Contains("no folder", $"{_folder.Quick.Seal(_folder.Here("no/a.key"), KeyFolder.Key, KeyFolder.Passphrase)}");
        Assert.Equal("precious", File.ReadAllText(_folder.Here("a.key")));
        Assert.Single(_folder.Entries);
    }

    private KeyFault? Fault(string path) => _folder.Quick.Open(path, "QW-0114", null, KeyFolder.Passphrase).Fault;
}
