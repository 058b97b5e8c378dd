using FieldSession.Tests.Making;

namespace FieldSession.Tests.Custodian;

/// <summary>Whether a key is the right one, without a name.</summary>
public sealed class TheKeyIsCheckedTests : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed("XYLOPHONE\nQUAGMIRE\n");

    public void Dispose()
    {
        Assert.DoesNotContain("XYLOPHONE", _prompt.EverythingSaid);
        Assert.DoesNotContain("QUAGMIRE", _prompt.EverythingSaid);
        _prompt.Dispose();
    }

    [Fact]
    public void The_right_key_with_its_copy_is_told_to_be_that_of_the_study_and_the_fitting()
    {
        File.Copy(_prompt.Here("a.key"), _prompt.Here("copy.key"));
        string said = _prompt.Must(0, ["keycheck", _prompt.Here("a.key"), "--study", _prompt.Study, "--copy", _prompt.Here("copy.key")]);
        Assert.Contains("ok  the passphrase opens it", said);
        Assert.Contains("ok  it is the key of fitting 1", said);
        Assert.Contains("copy.key holds the same key", said);
    }

    [Fact]
    public void Of_several_fittings_it_says_which()
    {
        _prompt.Enter(AWholeDay.Ready).Drive(3);
        _prompt.Must(0, ["seal", _prompt.Study, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("b.key")]);
        Assert.Contains("ok  it is the key of fitting 2", _prompt.Must(0, ["keycheck", _prompt.Here("b.key"), "--study", _prompt.Study]));
        Assert.Contains("NO  ", _prompt.Must(1, ["keycheck", _prompt.Here("a.key"), "--copy", _prompt.Here("b.key")]));
    }

    [Fact]
    public void Wrong_passphrase_another_study_cut_off_and_missing_are_told_apart()
    {
        Assert.Contains("wrong passphrase", _prompt.Must(1, ["keycheck", _prompt.Here("a.key")], passphrase: "four loud words here"));
        using AtThePrompt other = AWholeDay.Sealed(seed: 9);
        Assert.Contains(
            "NO  it is not the key of any fitting",
            _prompt.Must(1, ["keycheck", _prompt.Here("a.key"), "--study", other.Study])
        );
        File.WriteAllText(_prompt.Here("cut.key"), File.ReadAllText(_prompt.Here("a.key"))[..5000]);
        Assert.Contains("damaged", _prompt.Must(3, ["keycheck", _prompt.Here("cut.key")]));
        Assert.Contains("cut.key: not a key file", _prompt.Must(1, ["keycheck", _prompt.Here("a.key"), "--copy", _prompt.Here("cut.key")]));
        Assert.Contains("no such file", _prompt.Must(2, ["keycheck", _prompt.Here("none.key")]));
    }

    [Fact]
    public void A_key_file_with_a_flipped_byte_does_not_open_for_the_list_either()
    {
        byte[] bytes = File.ReadAllBytes(_prompt.Here("a.key"));
        bytes[^200] ^= 1;
        File.WriteAllBytes(_prompt.Here("edited.key"), bytes);
        Assert.NotEqual(0, _prompt.Run(["fitting", _prompt.Here("edited.key"), "--csv"]));
        Assert.DoesNotContain("fitting,place", _prompt.Said);
    }
}
