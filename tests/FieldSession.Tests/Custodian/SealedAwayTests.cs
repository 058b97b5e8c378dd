using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Custodian;

/// <summary>Sealed away from the study: the custodian has the plan, the crew takes a small public file in.</summary>
public sealed class SealedAwayTests : IDisposable
{
    private readonly AtThePrompt _prompt = new();

    public SealedAwayTests()
    {
        _prompt.Write("plan/plan.toml", AWholeDay.Plan);
        _prompt.Write("plan/route.csv", AWholeDay.Route);
        _prompt.Write("specs.txt", "ALPHA\nBETA\n");
    }

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void The_public_file_holds_codes_and_commitment_and_the_study_takes_them_in()
    {
        Seal(0);
        string text = File.ReadAllText(_prompt.Here("a.codes"));
        Assert.DoesNotContain("ALPHA", text);
        Assert.DoesNotContain("BETA", text);
        Start();
        string said = _prompt.Must(0, ["codes", _prompt.Study, _prompt.Here("a.codes")]);
        Assert.Contains(_prompt.Now().Fitting!.Commitment!, said);
        Assert.Contains(_prompt.Now().Fitting!.Commitment!, text);
        _prompt.Enter(AWholeDay.Ready).Drive(6).Predict(_prompt.Now().Codes.First());
        _prompt.Must(0, _prompt.RevealWords("a.key"));
    }

    [Fact]
    public void What_comes_next_is_told_step_by_step_to_the_custodian_and_to_the_crew()
    {
        string custodian = Seal(0);
        Assert.Contains("fieldsession fitting", custodian);
        Assert.Contains("under the tape", custodian);
        Assert.Contains("fieldsession codes STUDY", custodian);
        string crew = Start();
        Assert.Contains("--public", crew);
        Assert.Contains($"fieldsession codes {_prompt.Study}", crew);
    }

    [Fact]
    public void The_steps_are_messages_so_that_a_script_that_takes_the_output_gets_codes_and_commitment_alone()
    {
        StringWriter output = new();
        StringWriter error = new();
        string[] seal =
        [
            "seal",
            _prompt.Here("plan"),
            "--specs",
            _prompt.Here("specs.txt"),
            "--key",
            _prompt.Here("a.key"),
            "--public",
            _prompt.Here("a.codes"),
        ];
        Assert.Equal(
            0,
            CommandLine.Run(seal, _prompt.Outside() with { Output = output, Error = error, Passphrase = AtThePrompt.Passphrase })
        );
        Assert.Matches(@"^sealed: codes \d{3}, \d{3}\r?\ncommitment [0-9a-f]{64}\r?\n$", output.ToString());
        Assert.Contains("next, by the custodian:", error.ToString(), StringComparison.Ordinal);
        output.GetStringBuilder().Clear();
        error.GetStringBuilder().Clear();
        Assert.Equal(
            0,
            CommandLine.Run(["start", _prompt.Here("plan"), _prompt.Study], _prompt.Outside() with { Output = output, Error = error })
        );
        Assert.DoesNotContain("next", output.ToString(), StringComparison.Ordinal);
        Assert.Contains($"fieldsession drive {_prompt.Study}", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_file_that_was_sealed_beside_a_study_of_the_crew_is_pointed_out()
    {
        Start();
        Assert.Contains($"look out: the study {_prompt.Study} is in that folder; move", Seal(0), StringComparison.Ordinal);
    }

    [Fact]
    public void A_public_file_of_another_plan_or_of_a_plan_changed_after_sealing_is_refused_and_nothing_is_written()
    {
        Seal(0);
        _prompt.Write("plan/plan.toml", AWholeDay.Plan.Replace("R 1 R 1 R 1", "R 1 1 R", StringComparison.Ordinal));
        Start();
        Assert.Contains("changed after sealing", _prompt.Must(1, ["codes", _prompt.Study, _prompt.Here("a.codes")]));
        _prompt.Write("plan/plan.toml", AWholeDay.Plan.Replace("T-7", "T-8", StringComparison.Ordinal));
        _prompt.Must(0, ["start", _prompt.Here("plan"), _prompt.Here("other.study")]);
        Assert.Contains(
            "these codes are for the study T-7, this is T-8",
            _prompt.Must(1, ["codes", _prompt.Here("other.study"), _prompt.Here("a.codes")])
        );
        Assert.Null(_prompt.Now().Fitting);
    }

    [Fact]
    public void A_plan_amended_in_the_study_before_the_codes_are_taken_is_a_changed_plan()
    {
        Seal(0);
        Start();
        _prompt.Enter("amend margin_db=1.5 because the owner asks\n");
        Assert.Contains("changed after sealing", _prompt.Must(1, ["codes", _prompt.Study, _prompt.Here("a.codes")]));
    }

    [Fact]
    public void A_public_file_that_was_edited_cut_off_or_is_none_is_refused()
    {
        Seal(0);
        Start();
        string text = File.ReadAllText(_prompt.Here("a.codes"));
        string code = _prompt.SpecsIn("a.key").Keys.First().Digits;
        Refused("changed on the way", text.Replace(code, "777", StringComparison.Ordinal));
        Refused("changed on the way", text.Replace("\"fitting\": 1", "\"fitting\": 2", StringComparison.Ordinal));
        Refused("its end is missing", text[..(text.Length / 2)]);
        Refused("not a file of public codes", "{\"format\":1}");
        Refused("another program", text.Replace("codes-1", "codes-9", StringComparison.Ordinal));
        Assert.Null(_prompt.Now().Fitting);
        Assert.Contains("no such file", _prompt.Must(2, ["codes", _prompt.Study, _prompt.Here("none.codes")]));
    }

    [Fact]
    public void A_crew_member_as_custodian_is_refused_before_anything_is_drawn()
    {
        _prompt.Write("plan/plan.toml", AWholeDay.Plan.Replace("Ilse", "Tam", StringComparison.Ordinal));
        Seal(2);
        Assert.False(File.Exists(_prompt.Here("a.key")));
        Assert.False(File.Exists(_prompt.Here("a.codes")));
    }

    [Fact]
    public void Where_one_file_can_t_be_written_neither_is()
    {
        _prompt.Write("a.codes", "precious");
        Assert.Contains("already there", Seal(2));
        Assert.False(File.Exists(_prompt.Here("a.key")));
        Assert.Equal("precious", File.ReadAllText(_prompt.Here("a.codes")));
    }

    [Theory]
    [InlineData("add '--public FILE'", "plan", "--specs", "specs.txt", "--key", "x.key")]
    [InlineData("instead of the study", "day.study", "--specs", "specs.txt", "--key", "x.key", "--public", "x.codes")]
    [InlineData("1 to 6", "plan", "--specs", "specs.txt", "--key", "x.key", "--public", "x.codes", "--from-run", "7")]
    [InlineData("no such file", "plan", "--specs", "none.txt", "--key", "x.key", "--public", "x.codes")]
    [InlineData("too short", "plan", "--specs", "specs.txt", "--key", "x.key", "--public", "x.codes", "--two-people")]
    public void Words_that_do_not_go_together_are_refused_with_what_to_do(string why, params string[] words)
    {
        Start();
        string[] lying = [.. words.Select(word => word.StartsWith('-') || word.Length == 1 ? word : _prompt.Here(word))];
        Assert.Contains(why, _prompt.Must(2, ["seal", .. lying]));
        Assert.False(File.Exists(_prompt.Here("x.key")));
        Assert.False(File.Exists(_prompt.Here("x.codes")));
    }

    [Fact]
    public void A_refit_needs_no_list_keeps_the_marks_and_its_list_says_what_is_on_the_car()
    {
        _prompt.Must(
            0,
            [
                "seal",
                _prompt.Here("plan"),
                "--specs",
                _prompt.Here("specs.txt"),
                "--key",
                _prompt.Here("a.key"),
                "--public",
                _prompt.Here("a.codes"),
                "--draw-marks",
            ]
        );
        Start();
        _prompt.Must(0, ["codes", _prompt.Study, _prompt.Here("a.codes")]);
        _prompt.Enter(AWholeDay.Ready).Drive(3);
        string[] again =
        [
            "seal",
            _prompt.Here("plan"),
            "--after",
            _prompt.Here("a.key"),
            "--key",
            _prompt.Here("b.key"),
            "--public",
            _prompt.Here("b.codes"),
        ];
        Assert.Contains("--from-run", _prompt.Must(2, again));
        _prompt.Must(0, [.. again, "--from-run", "4"]);
        Assert.Contains("of fitting 1, this study waits for fitting 2", _prompt.Must(1, ["codes", _prompt.Study, _prompt.Here("a.codes")]));
        _prompt.Must(0, ["codes", _prompt.Study, _prompt.Here("b.codes")]);
        Dictionary<string, string> before = Marks("a.key");
        Assert.Equal(before, Marks("b.key"));
        string list = _prompt.Must(0, ["fitting", _prompt.Here("b.key"), "--print"]);
        string onTheCar = _prompt.SpecsIn("a.key")[_prompt.Now().Runs[^1].Code];
        Assert.Contains($"on the car now: {onTheCar} (it was code {_prompt.Now().Runs[^1].Code})", list);
        Assert.Contains("run 4 of 6", list);
        Assert.DoesNotContain("run 3 of 6", list);
        _prompt.Drive(3);
    }

    [Fact]
    public void A_refit_in_the_study_knows_the_code_on_the_car_and_with_the_earlier_key_the_set()
    {
        Start();
        _prompt.Must(0, ["seal", _prompt.Study, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("a.key")]);
        _prompt.Enter(AWholeDay.Ready).Drive(3);
        _prompt.Must(0, ["seal", _prompt.Study, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("b.key")]);
        SpecCode last = _prompt.Now().Runs[^1].Code;
        Assert.Contains($"what was code {last}", _prompt.Must(0, ["fitting", _prompt.Here("b.key"), "--print"]));
        string list = _prompt.Must(0, ["fitting", _prompt.Here("b.key"), "--print", "--earlier", _prompt.Here("a.key")]);
        Assert.Contains($"on the car now: {_prompt.SpecsIn("a.key")[last]} (it was code {last})", list);
    }

    private Dictionary<string, string> Marks(string key) =>
        _prompt
            .Must(0, ["fitting", _prompt.Here(key), "--csv"])
            .Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries)
            .Skip(1)
            .Select(row => row.Split(','))
            .OrderBy(cells => cells[3], StringComparer.Ordinal)
            .ToDictionary(cells => cells[3], cells => cells[4]);

    private void Refused(string why, string text)
    {
        _prompt.Write("edited.codes", text);
        Assert.Contains(why, _prompt.Must(2, ["codes", _prompt.Study, _prompt.Here("edited.codes")]));
    }

    private string Start() => _prompt.Must(0, ["start", _prompt.Here("plan"), _prompt.Study]);

    private string Seal(int code) =>
        _prompt.Must(
            code,
            [
                "seal",
                _prompt.Here("plan"),
                "--specs",
                _prompt.Here("specs.txt"),
                "--key",
                _prompt.Here("a.key"),
                "--public",
                _prompt.Here("a.codes"),
            ]
        );
}
