using FieldSession.Store.Sealing;

namespace FieldSession.Tests.Sealing;

public sealed class KeysOfTwoPeople : IDisposable
{
    private const string Second = "another quiet person";

    private readonly KeyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_key_split_between_two_people_needs_both_passphrases_each_in_its_place()
    {
        string path = _folder.Here("two.key");
        Assert.Null(_folder.Quick.Seal(path, KeyFolder.Key, TwoPassphrases.Joined(KeyFolder.Passphrase, Second)));
        Assert.Equal(2, KeyFile.LabelOf(path, out _)!.People);
        Assert.Equal(KeyFault.NeedsTwoPassphrases, _folder.Quick.Open(path, KeyFolder.Passphrase).Fault);
        Assert.Equal(
            KeyFault.WrongPassphraseOrChanged,
            _folder.Quick.Open(path, TwoPassphrases.Joined(Second, KeyFolder.Passphrase)).Fault
        );
        Assert.Equal(
            KeyFault.WrongPassphraseOrChanged,
            _folder.Quick.Open(path, TwoPassphrases.Joined(KeyFolder.Passphrase, "another loud person")).Fault
        );
        Assert.NotNull(_folder.Quick.Open(path, TwoPassphrases.Joined(KeyFolder.Passphrase, Second)).Key);
    }

    [Fact]
    public void A_key_of_two_people_edited_to_one_does_not_open_for_either()
    {
        string path = _folder.Here("two.key");
        Assert.Null(_folder.Quick.Seal(path, KeyFolder.Key, TwoPassphrases.Joined(KeyFolder.Passphrase, Second)));
        string edited = File.ReadAllText(path).Replace("\"people\": 2", "\"people\": 1", StringComparison.Ordinal);
        Assert.Equal(KeyFault.WrongPassphraseOrChanged, _folder.OpenText(edited).Fault);
        Assert.Equal(
            KeyFault.OtherParameters,
            _folder.OpenText(edited.Replace("\"people\": 1", "\"people\": 3", StringComparison.Ordinal)).Fault
        );
    }

    [Fact]
    public void Each_of_the_two_passphrases_has_its_least_length() =>
        Assert.Contains(
            "8 characters",
            $"{KeyFile.ObjectionTo(_folder.Here("two.key"), TwoPassphrases.Joined(KeyFolder.Passphrase, "short"))}"
        );
}
