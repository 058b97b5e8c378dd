using FieldSession.Tests.Making;

namespace FieldSession.Tests.Revealing;

/// <summary>Wrong, truncated, swapped, edited and foreign key files, through the command: each is told apart, none tells a spec.</summary>
public sealed class AKeyFileThatIsNotTheOneOpensNothing : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed("XYLOPHONE\nQUAGMIRE\n").Enter(AWholeDay.Ready).Drive(6);
    private readonly byte[] _whole;

    public AKeyFileThatIsNotTheOneOpensNothing()
    {
        _prompt.Predict(_prompt.Now().Codes.First());
        _whole = File.ReadAllBytes(_prompt.Here("a.key"));
    }

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void Each_is_refused_with_what_to_do_and_the_right_one_still_opens_afterwards()
    {
        Refused(2, "no such file", "none.key");
        Refused(3, "damaged", With("cut.key", _whole[..(_whole.Length / 2)]));
        Refused(3, "damaged", With("empty.key", []));
        Refused(3, "can't be read", "plan");
        Refused(1, "slow on purpose", With("edited.key", Edited("cipher")));
        Refused(1, "slow on purpose", With("salted.key", Edited("salt")));
        Refused(1, "settings that are not accepted", With("weak.key", Replaced("600000", "1000")));
        Refused(1, "another study, T-8", Foreign(AWholeDay.Plan.Replace("T-7", "T-8", StringComparison.Ordinal)));
        Refused(1, "another sealing", Foreign(AWholeDay.Plan));
        Refused(1, "slow on purpose", "a.key", passphrase: "four loud words here");
        Assert.DoesNotContain("XYLOPHONE", _prompt.EverythingSaid, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("QUAGMIRE", _prompt.EverythingSaid, StringComparison.OrdinalIgnoreCase);
        Assert.Null(_prompt.Now().Opening);
        File.WriteAllBytes(_prompt.Here("a.key"), _whole);
        Assert.Contains("XYLOPHONE (control)", _prompt.Must(0, _prompt.RevealWords("a.key")));
    }

    [Fact]
    public void A_note_that_names_a_spec_is_pointed_out_to_the_custodian_at_the_reveal()
    {
        using AtThePrompt prompt = AWholeDay
            .Sealed("XYLOPHONE\nQUAGMIRE\n")
            .Enter(AWholeDay.Ready)
            .Drive(6)
            .Enter("; felt like the quagmire to me\n");
        prompt.Predict(prompt.Now().Codes.First());
        string said = prompt.Must(0, prompt.RevealWords("a.key"));
        Assert.Contains("written before the reveal, names a spec: felt like the quagmire to me", said);
        prompt.Must(0, ["report", prompt.Study, "--out", prompt.Here("report")]);
        Assert.Contains("names a spec: look whether the blind leaked", File.ReadAllText(prompt.Here("report/report.md")));
    }

    [Fact]
    public void No_command_takes_a_passphrase_among_its_words()
    {
        foreach (string command in new[] { "seal", "reveal", "demo", "verify", "report" })
        {
            string help = _prompt.Must(0, [command, "--help"]);
            Assert.DoesNotContain("--pass", help, StringComparison.OrdinalIgnoreCase);
        }
    }

    private void Refused(int code, string why, string key, string passphrase = AtThePrompt.Passphrase) =>
        Assert.Contains(why, _prompt.Must(code, ["reveal", _prompt.Study, "--key", _prompt.Here(key)], passphrase: passphrase));

    private string With(string name, byte[] bytes)
    {
        File.WriteAllBytes(_prompt.Here(name), bytes);
        return name;
    }

    // The first base64 character of a member becomes another one.
    private byte[] Edited(string member)
    {
        string start = $"\"{member}\": \"";
        string text = File.ReadAllText(_prompt.Here("a.key"));
        int at = text.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return System.Text.Encoding.UTF8.GetBytes($"{text[..at]}{(text[at] == 'A' ? 'B' : 'A')}{text[(at + 1)..]}");
    }

    private byte[] Replaced(string what, string by) =>
        System.Text.Encoding.UTF8.GetBytes(File.ReadAllText(_prompt.Here("a.key")).Replace(what, by, StringComparison.Ordinal));

    private string Foreign(string plan)
    {
        using AtThePrompt other = AWholeDay.Sealed("ONE\nTWO\n", plan, seed: 9);
        return With($"foreign{plan.GetHashCode(StringComparison.Ordinal)}.key", File.ReadAllBytes(other.Here("a.key")));
    }
}
