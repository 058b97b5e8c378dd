using System.Text.Json;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Merging;

/// <summary>
/// Two cars side by side, a laptop in each: the study is handed over as a file once, and the strands come together in the evening.
/// </summary>
public sealed class TwoCarsTests : IDisposable
{
    private readonly AtThePrompt _prompt = new();

    private string X => _prompt.Here("x/day.study");

    private string Y => _prompt.Here("y/day.study");

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void The_strands_come_together_to_one_comparison_whichever_way_they_are_merged()
    {
        Driven();
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        Assert.Contains("new lines of strand", _prompt.Said);
        Assert.Contains("8 runs", _prompt.Said);
        Assert.DoesNotContain("Conflict", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["merge", Y, X]);
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        Assert.Contains("nothing new", _prompt.Said);
        string one = _prompt.Must(ExitCode.Done, ["compare", X, "--json"]);
        Assert.Equal(one, _prompt.Must(ExitCode.Done, ["compare", Y, "--json"]));
        _prompt.Must(ExitCode.Done, ["verify", X]);
        Assert.Contains("entries, commitment and freeze hold", _prompt.Said);
    }

    [Fact]
    public void The_merged_comparison_has_the_design_of_two_cars_side_by_side()
    {
        Driven();
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        using JsonDocument json = JsonDocument.Parse(_prompt.Must(ExitCode.Done, ["compare", X, "--json"]));
        JsonElement steady = json.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");
        // eight runs less two codes, three further slots and one further car
        Assert.Equal(2, steady.GetProperty("nu_run").GetInt32());
        Assert.False(steady.GetProperty("drift_in_model").GetBoolean());
        Assert.NotEqual(JsonValueKind.Null, steady.GetProperty("overall").GetProperty("lo95").ValueKind);

        _prompt.Must(ExitCode.Done, ["export", X, "--out", _prompt.Here("out")]);
        string[] cells = File.ReadAllLines(_prompt.Here("out/readings.csv"));
        Assert.Contains("slot", cells[0]);
        string fromCsv = _prompt.Must(
            ExitCode.Done,
            ["compare", _prompt.Here("out/readings.csv"), "--reference", Code(0), "--margin", "1", "--impact-margin", "2", "--json"]
        );
        using JsonDocument csv = JsonDocument.Parse(fromCsv);
        Assert.Equal(
            steady.GetProperty("overall").GetRawText(),
            csv.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady").GetProperty("overall").GetRawText()
        );
    }

    [Fact]
    public void A_run_started_on_both_laptops_is_shown_and_settled_by_a_recorded_act()
    {
        HandedOver(cars: "");
        Enter(X, $"calibration before 94.0\nrun {Code(0)}\n60\n72\n");
        Enter(Y, $"calibration before 94.1\nrun {Code(0)}\n61\n73\n");
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        Assert.Contains("Conflict 1: run 1 of the order was started twice", _prompt.Said);
        Assert.Contains("NOT SETTLED", _prompt.Said);
        Enter(X, "settle 1 first because the other one was a try\n");
        Assert.Contains("none is left open", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["export", X, "--out", _prompt.Here("out")]);
        string[] readings = File.ReadAllLines(_prompt.Here("out/readings.csv"));
        Assert.Equal(5, readings.Length);
        Assert.Equal(2, readings.Count(row => row.Contains("conflict settled", StringComparison.Ordinal)));
        _prompt.Must(ExitCode.Done, ["review", X]);
        Assert.Contains("settled: the first counts, because the other one was a try", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["report", X, "--out", _prompt.Here("report")]);
        Assert.Contains("settled: the first counts, because the other one was a try", File.ReadAllText(_prompt.Here("report/report.md")));
    }

    [Theory]
    [InlineData("first", 3)]
    [InlineData("second", 3)]
    [InlineData("both", 3)]
    public void A_run_shifted_on_both_laptops_is_shown_and_settled_by_a_recorded_act(string side, int segment)
    {
        HandedOver(cars: "", "Mill lane,smooth,80,900\nBridge joint,impact,50,60\nLong meadow,smooth,80,900\nOver hill,coarse,80,900\n");
        Enter(X, $"calibration before 94.0\nrun {Code(0)}\n60\n72\nend\n");
        _prompt.Must(ExitCode.Done, ["merge", Y, X]);
        Enter(X, "shift 1.2 +1\n");
        Enter(Y, "shift 1.2 +1\n");
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        Assert.Contains(
            "Conflict 1: run 1 was shifted on both laptops; check that its readings are where they belong; NOT SETTLED",
            _prompt.Said
        );
        Enter(X, $"settle 1 {side} because the joint was missed once\n");
        Assert.Equal(
            [1, segment],
            Logbook.Fold(Store.Journaling.ReadStudy.At(X).Lines).Runs[0].Passages.Select(passage => passage.Segment)
        );
        _prompt.Must(ExitCode.Done, ["review", X]);
        Assert.Contains("shifted on both laptops", _prompt.Said);
        Assert.Contains("because the joint was missed once", _prompt.Said);

        Enter(X, "settle 1 both because it was missed twice\n");
        Assert.Equal([1, 3], Logbook.Fold(Store.Journaling.ReadStudy.At(X).Lines).Runs[0].Passages.Select(passage => passage.Segment));
        Assert.Empty(Logbook.Fold(Store.Journaling.ReadStudy.At(X).Lines).Unsettled);
    }

    [Fact]
    public void The_brackets_of_two_cars_are_each_cars_own()
    {
        Driven();
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        FieldSession.State.Study study = Logbook.Fold(Store.Journaling.ReadStudy.At(X).Lines);
        Assert.All(FieldSession.State.Brackets.Of(study), bracket => Assert.Single(bracket.Runs.Select(run => run.Car).Distinct()));
        // X drove R 1 1 R, Y drove 1 R R 1: only X came back to the control with candidates between
        Assert.Equal(["X"], FieldSession.State.Brackets.Of(study).Select(bracket => bracket.Opening.Car));
    }

    [Fact]
    public void Two_merged_copies_are_verified_in_the_same_words()
    {
        Driven();
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        _prompt.Must(ExitCode.Done, ["merge", Y, X]);
        static IEnumerable<string> Strands(string said) =>
            said.Split('\n').Where(line => line.Contains("strand", StringComparison.Ordinal)).Distinct();
        IEnumerable<string> ofX = Strands(_prompt.Must(ExitCode.Done, ["verify", X]));
        Assert.Equal(ofX, Strands(_prompt.Must(ExitCode.Done, ["verify", Y])));
    }

    [Fact]
    public void Data_typed_after_the_other_laptop_froze_them_are_shown_and_need_a_decision_before_the_key()
    {
        HandedOver(cars: "");
        string driven = $"calibration before 94.0\nrun {Code(0)}\n5960\n72\nrun {Code(1)}\n6061\n73\ncalibration after 94.0\n";
        Enter(X, driven);
        _prompt.Must(ExitCode.Done, ["merge", Y, X]);
        _prompt.Run(["predict", X], $"{Code(1)}\n3\n\n\nguess\n");
        Assert.Contains("prediction of Ro locked", _prompt.Said);
        Enter(Y, "flag 1.1 t lorry\n");
        _prompt.Must(ExitCode.Done, ["merge", X, Y]);
        Assert.Contains("while the other laptop had frozen them", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["verify", X]);
        Enter(X, "settle 1 first because the flag came too late\n");
        _prompt.Must(ExitCode.Done, ["export", X, "--out", _prompt.Here("out")]);
        Assert.DoesNotContain(
            File.ReadAllLines(_prompt.Here("out/readings.csv")),
            row => row.Contains("traffic", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Another_study_and_a_broken_chain_are_refused_and_change_nothing()
    {
        HandedOver(cars: "");
        Enter(X, "calibration before 94.0\n");
        Enter(Y, "calibration before 94.1\n; one\n; two\n; three\n");
        _prompt.Must(ExitCode.Done, ["start", _prompt.Here("plan"), _prompt.Here("other.study")]);
        byte[] before = File.ReadAllBytes(Path.ChangeExtension(X, ".journal"));
        _prompt.Must(ExitCode.Wrong, ["merge", X, Y, _prompt.Here("other.study")]);
        Assert.Contains("this is another study", _prompt.Said);
        Assert.Equal(before, File.ReadAllBytes(Path.ChangeExtension(X, ".journal")));

        File.Delete(Y);
        string journal = Path.ChangeExtension(Y, ".journal");
        File.WriteAllText(journal, File.ReadAllText(journal).Replace("one", "six", StringComparison.Ordinal));
        _prompt.Must(ExitCode.Damaged, ["merge", X, Y]);
        Assert.Contains("line 5", _prompt.Said);
        Assert.Equal(before, File.ReadAllBytes(Path.ChangeExtension(X, ".journal")));
    }

    [Fact]
    public void A_copy_that_is_carried_to_another_place_goes_on_with_the_day()
    {
        HandedOver(cars: "");
        Enter(X, $"calibration before 94.0\nrun {Code(0)}\n5961\n");
        Directory.CreateDirectory(_prompt.Here("z"));
        foreach (string file in Directory.GetFiles(_prompt.Here("x")))
        {
            File.Copy(file, _prompt.Here("z/" + Path.GetFileName(file)));
        }

        Enter(_prompt.Here("z/day.study"), $"72\nrun {Code(1)}\n6062\n73\ncalibration after 94.0\n");
        Assert.DoesNotContain("?", _prompt.Said);
        _prompt.Must(ExitCode.Done, ["merge", X, _prompt.Here("z/day.study")]);
        Assert.Contains("2 runs", _prompt.Said);
        Assert.DoesNotContain("Conflict", _prompt.Said);
    }

    private string Code(int place) => Logbook.Fold(Store.Journaling.ReadStudy.At(X).Lines).Fittings[0].Codes[place].Digits;

    private void HandedOver(string cars, string route = "Mill lane,smooth,80,900\nBridge joint,impact,50,60\n")
    {
        _prompt.Write(
            "plan/plan.toml",
            $"study = \"TW-1\"\nspecs = 2\norder = \"R 1 1 R R 1 1 R\"\ncrew = [\"Ro\", \"Tam\"]\ncustodian = \"Ilse\"\n{cars}"
        );
        _prompt.Write("plan/route.csv", $"segment,kind,speed_kmh,length_m\n{route}");
        _prompt.Write("specs.txt", "STANDARD\nSTIFFENED\n");
        Directory.CreateDirectory(_prompt.Here("x"));
        Directory.CreateDirectory(_prompt.Here("y"));
        _prompt.Must(ExitCode.Done, ["start", _prompt.Here("plan"), X]);
        _prompt.Must(ExitCode.Done, ["seal", X, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("a.key")]);
        foreach (string file in Directory.GetFiles(_prompt.Here("x")))
        {
            File.Copy(file, _prompt.Here("y/" + Path.GetFileName(file)));
        }
    }

    // X drives R 1 1 R, Y at the same time 1 R R 1: the places of the order are shared out by car
    private void Driven()
    {
        HandedOver("cars = [\"X\", \"Y\"]\ncar_order = [\"X\", \"Y\", \"X\", \"Y\", \"Y\", \"X\", \"Y\", \"X\"]\n");
        (string r, string c) = (Code(0), Code(1));
        Enter(
            X,
            $"calibration before 94.0\nrun {r} car=X\n60\n72.1\nrun {c} car=X\n61.2\n73\nrun {c} car=X\n61\n73.2\nrun {r} "
                + "car=X\n60.3\n72\ncalibration after 94.0\n"
        );
        Enter(
            Y,
            $"calibration before 94.2\nrun {c} car=Y\n62.1\n74\nrun {r} car=Y\n61.1\n72.7\nrun {r} car=Y\n60.8\n73.1\nrun {c} "
                + "car=Y\n62\n74.3\ncalibration after 94.2\n"
        );
    }

    private void Enter(string study, string typed, int code = ExitCode.Done) => _prompt.Must(code, ["enter", study], typed);
}
