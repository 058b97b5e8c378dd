using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Terminal.Demonstration;
using FieldSession.Tests.Making;
using FieldSession.Tests.References;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Journeys;

/// <summary>Three specs from plan to report: the second demo, held against case 23-dunmarrow (own R reference, SOURCE.md there).</summary>
public class TheSecondDemoTests
{
    private static readonly DemoStudy Demo = DemoStudy.Named("Dunmarrow")!;

    [Fact]
    public void Before_the_reveal_both_codes_are_compared_with_the_reference_as_case_23_says()
    {
        Study study = Driven("MID").Study;
        // the case tests equivalence of impacts at 1 dB, the plan at 2
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), StudyTerms.Of(study) with { ImpactMarginDb = 1 });
        Assert.Equal("158", comparison.Reference);
        Assert.Equal((63, 5), (comparison.Readings.Total, comparison.Readings.Spoilt));
        Assert.Equal(["704", "391"], comparison.Comparisons.Select(pair => pair.Code));
        Dictionary<string, object?> found = [];
        foreach (CodeComparison pair in comparison.Comparisons)
        {
            FoundNumbers.Add(found, "steady", pair.Classes.Steady!);
            FoundNumbers.Add(found, "impact", pair.Classes.Impact!);
            FoundNumbers.Add(found, $"pair.{pair.Code}-{pair.Reference}.steady.overall", pair.Classes.Steady!.Overall);
            FoundNumbers.Add(found, $"pair.{pair.Code}-{pair.Reference}.impact.overall", pair.Classes.Impact!.Overall);
        }

        Assert.Equal(50, ReferenceCase.Open("23-dunmarrow").Check(found));
    }

    // by the same case: against another control the differences are those of the two pairs
    [Fact]
    public void After_the_reveal_the_others_are_compared_with_the_real_control_wherever_it_stood()
    {
        const double MidOver158 = 0.0793650793650791;
        const double TallOver158 = -0.242063492063472;
        string report = Report("LOW");
        Assert.Contains("MID (158) minus LOW (704)", report);
        Assert.Contains("TALL (391) minus LOW (704)", report);
        Study study = Driven("LOW").Study;
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), StudyTerms.Of(study) with { Reference = "704" });
        Assert.Equal(-MidOver158, Steady(comparison, "158"), 8);
        Assert.Equal(TallOver158 - MidOver158, Steady(comparison, "391"), 8);
    }

    [Fact]
    public void The_verdict_is_same_within_the_margin_on_steady_roads_and_the_predictions_are_scored_by_two_in_three()
    {
        string report = Report("MID");
        Assert.Contains("SAME WITHIN", report);
        Assert.Contains("1 of 2 right. Blind guessing gives 1.33 on average", report);
        Assert.Contains("any of the 2 specs that are not the control", report);
    }

    [Fact]
    public void The_command_replays_it_and_names_what_there_is_where_the_name_is_wrong()
    {
        using AtThePrompt prompt = new();
        string said = prompt.Must(0, ["demo", "dunmarrow", "--replay"], passphrase: null);
        Assert.Contains("DM-0207", said);
        Assert.Contains("TALL (391)", said);
        Assert.Contains("quillmere, dunmarrow", prompt.Must(2, ["demo", "elsewhere", "--replay"], passphrase: null));
        Assert.Contains("QW-0114", prompt.Must(0, ["demo", "--replay"], passphrase: null));
    }

    private static double Steady(Comparison comparison, string code) =>
        comparison.Comparisons.Single(pair => pair.Code == code).Classes.Steady!.Overall!.DifferenceDb;

    private static string Report(string control)
    {
        (Study study, KeySheet key) = Driven(control);
        KeyOpened opened = KeyRing
            .Empty.With(key)
            .Fact(study, key.Places.Select(line => new MarkRead(line.Code, line.Spec)), ["Bex", "Orla"]);
        Report report = DayReport.Of(opened.ApplyTo(study, new LineMark(999, default)), OpenedKey.In([opened]), new Provenance(1, "", ""));
        return Store.Exports.ReportMarkdown.Of(report).Replace("\\", "", StringComparison.Ordinal);
    }

    private static (Study Study, KeySheet Key) Driven(string control)
    {
        DemoClock clock = new();
        Logbook logbook = Logbook.Open(new MemoryJournal(), clock, "00000000000000aa");
        PlanMade plan = new(Store.Planning.PlanFolder.Parse(Demo.Text("plan.toml"), Demo.Text("route.csv"), "dunmarrow").Plan!);
        string[] specs = [.. Demo.Lines("specs.txt").Where(line => line.Length > 0)];
        KeySheet key = new(
            plan.Plan.StudyName,
            Demo.Codes.Zip(specs, (code, spec) => new KeyLine(new SpecCode(code), spec)),
            control,
            Convert.ToHexStringLower(new SeededLot(1).Bytes(KeySheet.NonceBytes))
        );
        Assert.True(logbook.Write(plan).IsWritten);
        Assert.True(logbook.Write(new SpecsSealed(key.Codes, Commitment.Of(key))).IsWritten);
        DemoDay.Type(logbook, Demo.Lines("day.txt"), clock, int.MaxValue);
        DemoDay.Type(logbook, Demo.Lines("evening.txt"), clock, int.MaxValue);
        return (logbook.Study, key);
    }
}
