using System.Text.Json;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Ptys;

/// <summary>
/// Two cars, a laptop in each: the study is handed over as a file, both crews type in terminals of their own, one of them names the wrong
/// car, and in the evening the strands come together, over and over and in both directions, to one study.
/// </summary>
[Collection(Pty.Collection)]
public sealed class TwoLaptopsInTmux : IDisposable
{
    private readonly AtThePrompt _prompt = new(laptop: Surroundings.OfThisProcess().Laptop);

    private string X => _prompt.Here("x/day.study");

    private string Y => _prompt.Here("y/day.study");

    [TmuxFact]
    public void Two_crews_drive_side_by_side_settle_what_they_both_started_and_have_one_study()
    {
        (string r, string c) = HandedOver();
        using (
            Tmux x = Opened(X),
                y = Opened(Y)
        )
        {
            SideBySide(
                (x, X, [":calibration before 94.0", $":run {r} car=X", "59.8-60.2", "72.1", $":run {c} car=X", "61-61.4", "73"]),
                (y, Y, [":calibration before 94.2", $":run {c} car=Y", "62-62.2", "74", $":run {c} car=X", "61-62", "74.1"])
            );
            x.Leave();
            y.Leave();
        }

        Merge(X, Y);
        Merge(Y, X);
        Assert.Contains("Conflict 1: run 1 of the order of car X was started twice", _prompt.Said);
        using (
            Tmux x = Opened(X),
                y = Opened(Y)
        )
        {
            x.Until("laptops in conflict: run 1 of the order of car X");
            y.Until("laptops in conflict: run 1 of the order of car X");
            Type(x, X, ":settle 1 first because Y had named the wrong car");
            x.Until("settled: conflict 1");
            Assert.DoesNotContain("in conflict", x.Screen);
            SideBySide(
                (x, X, [$":run {c} car=X", "61-61.2", "73.2", $":run {r} car=X", "60.2-60.4", "72", ":calibration after 94.0"]),
                (
                    y,
                    Y,
                    [
                        $":run {r} car=Y",
                        "61-61.2",
                        "72.7",
                        $":run {r} car=Y",
                        "60.7-60.9",
                        "73.1",
                        $":run {c} car=Y",
                        "61.9-62.1",
                        "74.3",
                        ":calibration after 94.2",
                    ]
                )
            );
            x.Leave();
            y.Leave();
        }

        OneStudyWhicheverWayTheyAreMerged();
        TheEveningHasNothingToSettle();
    }

    private void TheEveningHasNothingToSettle()
    {
        using Tmux evening = Opened(X);
        evening.Press("F4").Until("parked").Answer("parked").Until("Blind summary, by code only");
        Assert.DoesNotContain("NOT SETTLED", evening.Screen);
    }

    public void Dispose() => _prompt.Dispose();

    private void OneStudyWhicheverWayTheyAreMerged()
    {
        Merge(Y, X);
        Merge(X, Y);
        Merge(X, Y);
        Assert.Contains("nothing new", _prompt.Said);
        Merge(Y, X);
        string compared = _prompt.Must(ExitCode.Done, ["compare", X, "--json"]);
        Assert.Equal(compared, _prompt.Must(ExitCode.Done, ["compare", Y, "--json"]));
        Assert.Equal(
            Lines(X).Select(line => line.Hash).Order(StringComparer.Ordinal),
            Lines(Y).Select(line => line.Hash).Order(StringComparer.Ordinal)
        );
        _prompt.Must(ExitCode.Done, ["verify", X]);
        Assert.Contains("entries, commitment and freeze hold", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["review", X]);
        Assert.Contains("settled: the first counts, because Y had named the wrong car", _prompt.Said);

        // eight runs that count less two codes, three further slots and one further car; what is typed in seconds is told side by side by
        // turn
        using JsonDocument json = JsonDocument.Parse(compared);
        Assert.Equal(
            2,
            json.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady").GetProperty("nu_run").GetInt32()
        );
    }

    // The codes of reference and candidate.
    private (string Reference, string Candidate) HandedOver()
    {
        _prompt.Write(
            "plan/plan.toml",
            """
            study = "TW-2"
            specs = 2
            order = "R 1 1 R R 1 1 R"
            cars = ["X", "Y"]
            car_order = ["X", "Y", "X", "Y", "Y", "X", "Y", "X"]
            crew = ["Ro", "Tam"]
            custodian = "Ilse"
            """
        );
        _prompt.Write("plan/route.csv", "segment,kind,speed_kmh,length_m\nMill lane,smooth,80,900\nBridge joint,impact,50,60\n");
        _prompt.Write("specs.txt", "STANDARD\nSTIFFENED\n");
        Directory.CreateDirectory(_prompt.Here("x"));
        Directory.CreateDirectory(_prompt.Here("y"));
        _prompt.Must(ExitCode.Done, ["start", _prompt.Here("plan"), X]);
        _prompt.Must(ExitCode.Done, ["seal", X, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("a.key")]);
        foreach (string file in Directory.GetFiles(_prompt.Here("x")))
        {
            File.Copy(file, _prompt.Here($"y/{Path.GetFileName(file)}"));
        }

        FieldSession.State.Study study = Logbook.Fold(Lines(X));
        return (study.Fitting!.Codes[0].Digits, study.Fitting.Codes[1].Digits);
    }

    private Tmux Opened(string study) =>
        new Tmux(_prompt.Here(""), ProgramInATerminal.Path, "drive", study).Until($"saved {Lines(study).Count} ");

    // What was typed is waited for by the line it makes; a laptop that takes note of another one's lines writes one more before it.
    private static void Type(Tmux laptop, string study, string line)
    {
        int before = Lines(study).Count;
        laptop.Type(line).Press("Enter").Until(() => Lines(study) is [.., { Kind: not "joined" }] now && now.Count > before);
        laptop.Until($"saved {Lines(study).Count} ");
    }

    // A line on one laptop, then one on the other, so that their runs overlap.
    private static void SideBySide(params (Tmux Laptop, string Study, string[] Lines)[] crews)
    {
        for (int i = 0; i < crews.Max(crew => crew.Lines.Length); i++)
        {
            foreach ((Tmux laptop, string study, string[] lines) in crews.Where(crew => i < crew.Lines.Length))
            {
                Type(laptop, study, lines[i]);
            }
        }
    }

    private void Merge(string into, string from) => _prompt.Must(ExitCode.Done, ["merge", into, from]);

    private static IReadOnlyList<Line> Lines(string study) => ReadStudy.At(study).Lines;
}
