using System.Text;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>
/// A whole day by the real program in a folder that holds everything it may write to: study, exports, temporary files, home.
/// The spec names are unmistakable, and no byte written and no word said before the reveal holds one, in any disguise.
/// </summary>
public sealed class TheBlindHoldsTests : IDisposable
{
    private const string Passphrase = "four quiet words here";

    private static readonly string[] Specs = ["ZWIEBELTURM", "KRAKENSPUR"];

    private readonly OnesOwnHome _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void From_sealing_to_the_last_prediction_no_name_is_written_or_said()
    {
        Begin();
        string[] codes = Driven();
        Evening(codes);
        Wrongs(codes);
        AssertNothingTold();

        string reveal = Run(
            1,
            [
                "reveal",
                "day.study",
                "--key",
                "custodian/a.key",
                "--mark",
                $"{codes[0]}=?",
                "--mark",
                $"{codes[1]}=?",
                "--reader",
                "Ro",
                "--reader",
                "Ilse",
                "--as-read",
            ]
        );
        Assert.Contains(Specs[0], reveal);
        Assert.NotEmpty(Traces());
    }

    [Fact]
    public void The_search_finds_a_name_in_each_disguise()
    {
        foreach (byte[] disguise in Leak.Disguises(Specs[0]))
        {
            File.WriteAllBytes(_home.Here("leak"), [1, 2, .. disguise, 3]);
            Assert.NotEmpty(Traces());
        }
    }

    private void Begin()
    {
        _home.Write("plan/plan.toml", AWholeDay.Plan);
        _home.Write("plan/route.csv", AWholeDay.Route);
        // the custodian's own place, which is not the crew's
        _home.Write("custodian/specs.txt", string.Join('\n', Specs));
        Run(0, ["start", "plan", "day.study"]);
        Run(0, ["seal", "day.study", "--specs", "custodian/specs.txt", "--key", "custodian/a.key"]);
        File.Delete(_home.Here("custodian/specs.txt"));
    }

    private string[] Driven()
    {
        string sealedCodes = Run(1, ["enter", "day.study"], $"{AWholeDay.Ready}run 000\n");
        string asked = sealedCodes[(sealedCodes.IndexOf("asks for ", StringComparison.Ordinal) + 9)..][..3];
        string other = sealedCodes.Split("the codes are ")[1].Split(';')[0].Split(", ").Single(code => code != asked);
        StringBuilder day = new();
        for (int run = 0; run < 6; run++)
        {
            day.Append($"run {(run % 2 == 0 ? asked : other)}\n60-62\n64-67 t lorry\n71.{run}\n; a hollow ring\n");
        }

        Run(0, ["enter", "day.study"], day.ToString());
        return [asked, other];
    }

    private void Evening(string[] codes)
    {
        Run(0, ["compare", "day.study"]);
        Run(0, ["compare", "day.study", "--json"]);
        Run(0, ["enter", "day.study"], "amend margin_db=1.5 because the owner asks\ncalibration after 94.0\n");
        Run(0, ["review", "day.study"]);
        Run(0, ["export", "day.study", "--out", "export-before"]);
        Run(0, ["report", "day.study", "--out", "report-before"]);
        Run(0, ["predict", "day.study", "--lock", $"Ro feature={codes[1]} sure=4", "--lock", $"Tam feature={codes[0]} sure=70%"]);
        Run(0, ["export", "day.study", "--out", "export-after"]);
        Run(0, ["report", "day.study", "--out", "report-after"]);
        Run(0, ["verify", "day.study"]);
    }

    private void Wrongs(string[] codes)
    {
        Run(1, ["enter", "day.study"], "58-60\nrun 999\namend order=R because x\nnonsense\n");
        Run(1, ["reveal", "day.study", "--key", "custodian/a.key"], passphrase: "four loud words here");
        Run(2, ["reveal", "day.study", "--key", "custodian/none.key"]);
        Run(2, ["reveal", "day.study", "--key", "custodian/a.key", "--mark", "nobody knows"]);
        Run(2, ["reveal", "day.study", "--paper", $"{codes[0]}"]);
        Run(1, ["seal", "day.study", "--paper"]);
        Run(1, ["score", "day.study"]);
        Run(2, ["verify", "nothing.study"]);
        Run(2, ["predict"]);
    }

    private void AssertNothingTold()
    {
        Assert.Empty(Traces());
        string said = _home.Said;
        Assert.All(Specs, spec => Assert.DoesNotContain(spec, said, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(Passphrase, said);
        Assert.True(Directory.GetFiles(_home.Path, "*", SearchOption.AllDirectories).Length > 15);
    }

    private IEnumerable<string> Traces() => Leak.FilesWith(_home.Path, Specs);

    private string Run(int code, string[] words, string typed = "", string passphrase = Passphrase) =>
        _home.Run(code, words, typed, passphrase);
}
