using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Commands;

public class SizeCommandTests
{
    /// <summary>Source: R, pt(ncp) and integrate; SOURCE.md beside the case.</summary>
    [Fact]
    public void The_planning_case_is_reproduced()
    {
        ReferenceCase reference = ReferenceCase.Open("19-planning");
        Dictionary<string, object?> found = [];
        foreach (Dictionary<string, string> row in reference.Table("data.csv"))
        {
            using JsonDocument json = Json(new AskedSize(row["D"], row["su"], row["se"], row["S"], Margin: row["Delta"]));
            string id = row["id"];
            found[$"{id}.run_sd"] = json.RootElement.GetProperty("run_mean_sd").GetDouble();
            found[$"{id}.runs_per_code_for_D"] = json.RootElement.GetProperty("runs_per_code_for_difference").GetInt32();
            found[$"{id}.runs_per_code_for_equivalence"] = json.RootElement.GetProperty("runs_per_code_for_equivalence").GetInt32();
            foreach (JsonElement runs in json.RootElement.GetProperty("runs").EnumerateArray())
            {
                int n = runs.GetProperty("runs_per_code").GetInt32();
                found[$"{id}.mdd80.n{n}"] = runs.GetProperty("mdd").GetDouble();
                found[$"{id}.power.n{n}"] = runs.GetProperty("power").GetDouble();
                found[$"{id}.tost_power.n{n}"] = runs.GetProperty("equivalence_power").GetDouble();
            }
        }

        Assert.Equal(56, reference.Check(found));
    }

    [Fact]
    public void A_number_of_runs_says_what_it_can_show()
    {
        using JsonDocument json = Json(new AskedSize(RunSd: "0.2", ReadingSd: "0,5", Segments: "10", Runs: "4"));

        // R: pt with ncp, case 19-planning, line quiet
        Assert.Equal(0.606975609526722, json.RootElement.GetProperty("asked").GetProperty("mdd").GetDouble(), 1e-6);
        Assert.Empty(json.RootElement.GetProperty("assumed").EnumerateArray());
    }

    [Fact]
    public void Taking_a_drift_out_costs_a_degree_of_freedom_from_three_runs_a_code_on()
    {
        SizeTerms terms = new(0.35, 0.75, 10, 1, 1);

        Assert.Null(DaySize.Row(terms, 2).SmallestWithDriftDb);
        Assert.True(DaySize.Row(terms, 3).SmallestWithDriftDb > DaySize.Row(terms, 3).SmallestDifferenceDb);
    }

    [Fact]
    public void The_words_say_what_was_assumed_and_keep_to_80_columns()
    {
        (int code, string output, _) = Run(new AskedSize(Runs: "3"));

        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Assumed, not measured: run-to-run SD, reading SD, segments.", output);
        Assert.Contains("3 runs per code show 1.30 dB or more with a chance of 80 %", output);
        Assert.All(output.Split(Environment.NewLine), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void Every_number_that_can_not_be_is_told()
    {
        (int code, string output, string error) = Run(new AskedSize("0", "NaN", "-1", "1.5", "1", "x", "1"));

        Assert.Equal((ExitCode.Wrong, ""), (code, output));
        Assert.Equal(7, error.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void The_command_line_hands_every_option_on()
    {
        using StringWriter output = new();
        string[] typed =
        [
            "--difference",
            "0.75",
            "--run-sd",
            "0.2",
            "--reading-sd",
            "0.5",
            "--segments",
            "9",
            "--power",
            "0.9",
            "--margin",
            "0.8",
            "--runs",
            "5",
            "--json",
        ];

        int code = SizeCommand.Make().Parse(typed).Invoke(new() { Output = output });

        using JsonDocument json = JsonDocument.Parse(output.ToString());
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(0.75, json.RootElement.GetProperty("difference_db").GetDouble());
        Assert.Equal(9, json.RootElement.GetProperty("segments").GetInt32());
        Assert.Equal(0.9, json.RootElement.GetProperty("power_wanted").GetDouble());
        Assert.Equal(0.8, json.RootElement.GetProperty("margin_db").GetDouble());
        Assert.Equal(5, json.RootElement.GetProperty("asked").GetProperty("runs_per_code").GetInt32());
    }

    [Fact]
    public void A_day_that_repeats_perfectly_is_refused() =>
        Assert.Equal(ExitCode.Wrong, Run(new AskedSize(RunSd: "0", ReadingSd: "0")).Code);

    private static JsonDocument Json(AskedSize asked) => JsonDocument.Parse(Run(asked with { Json = true }).Output);

    private static (int Code, string Output, string Error) Run(AskedSize asked)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        int code = SizeCommand.Run(output, error, asked);
        return (code, output.ToString(), error.ToString());
    }
}
