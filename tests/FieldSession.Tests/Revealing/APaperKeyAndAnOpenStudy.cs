using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Revealing;

public class APaperKeyAndAnOpenStudy
{
    [Fact]
    public void On_paper_codes_are_drawn_and_no_file_and_no_commitment_is_made()
    {
        using AtThePrompt prompt = AWholeDay.OnPaper();
        Assert.Contains("there is no commitment", prompt.Said);
        Assert.Null(prompt.Now().Fitting!.Commitment);
        Assert.All(prompt.Now().Codes, code => Assert.Contains(code.Digits, prompt.Said));
        Assert.DoesNotContain(Directory.GetFiles(prompt.Here("")), file => file.EndsWith(".key", StringComparison.Ordinal));
    }

    [Fact]
    public void A_paper_key_typed_in_at_the_reveal_opens_it_and_the_report_says_what_it_is_worth()
    {
        using AtThePrompt prompt = AWholeDay.OnPaper().Enter(AWholeDay.Ready).Drive(6);
        SpecCode[] codes = [.. prompt.Now().Codes];
        prompt.Predict(codes[1]);
        prompt.Must(0, [.. Reveal(prompt, codes), "--control", "ALPHA"]);
        string report = Report(prompt);
        Assert.Contains("a paper key, typed in at the reveal", report);
        Assert.Contains($"BETA ({codes[1]}) minus ALPHA ({codes[0]})", report);
        Assert.Contains("blind comparison", report.Split('\n')[0]);
    }

    [Fact]
    public void A_paper_key_that_names_too_few_codes_or_a_strange_control_is_refused()
    {
        using AtThePrompt prompt = AWholeDay.OnPaper().Enter(AWholeDay.Ready).Drive(6);
        SpecCode[] codes = [.. prompt.Now().Codes];
        prompt.Predict(codes[1]);
        Assert.Contains("does not name", prompt.Must(1, ["reveal", prompt.Study, "--paper", $"{codes[0]}=ALPHA"]));
        Assert.Contains("none of the specs", prompt.Must(1, [.. Reveal(prompt, codes), "--control", "GAMMA"]));
        Assert.Contains("CODE=NAME", prompt.Must(2, ["reveal", prompt.Study, "--paper", "ALPHA"]));
        Assert.Null(prompt.Now().Opening);
    }

    [Fact]
    public void A_paper_key_is_asked_for_where_none_is_given()
    {
        using AtThePrompt prompt = AWholeDay.OnPaper().Enter(AWholeDay.Ready).Drive(6);
        SpecCode[] codes = [.. prompt.Now().DrivenCodes];
        prompt.Predict(codes[1]);
        string said = prompt.Must(0, ["reveal", prompt.Study], "ALPHA\nBETA\nalpha\nALPHA\nBETA\nRo\nIlse\n");
        Assert.Contains("ALPHA (control)", said);
        using AtThePrompt inFile = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
        inFile.Predict(inFile.Now().Codes.First());
        Assert.Contains("--key KEYFILE", inFile.Must(2, ["reveal", inFile.Study]));
    }

    [Fact]
    public void A_paper_key_is_not_taken_in_the_place_of_a_sealed_one_and_the_key_file_still_opens_it()
    {
        using AtThePrompt prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
        SpecCode[] codes = [.. prompt.Now().Codes];
        prompt.Predict(codes[1]);
        Assert.Contains("sealed with a key file", prompt.Must(1, [.. Reveal(prompt, codes), "--control", "ALPHA"]));
        Assert.Contains("sealed with a key file", prompt.Must(1, [.. Reveal(prompt, codes), "--as-read"]));
        Assert.Null(prompt.Now().Opening);
        prompt.Must(0, prompt.RevealWords("a.key"));
        Assert.True(prompt.Now().Opening is { CommitmentHolds: true, MarksAgree: true });
    }

    [Fact]
    public void A_study_driven_without_codes_is_called_not_blind_in_its_title_and_its_summary()
    {
        using AtThePrompt prompt = new();
        prompt.Write("plan/plan.toml", AWholeDay.Plan);
        prompt.Write("plan/route.csv", AWholeDay.Route);
        prompt.Must(0, ["start", prompt.Here("plan"), prompt.Study]);
        Assert.Contains("commitment: no codes are sealed", prompt.Must(1, ["enter", prompt.Study], AWholeDay.Ready + "run 417\n"));
        prompt.Enter("override commitment nobody could be spared as custodian\nrun 417\n60-62\n64-66\n71\nrun 862\n60-62\n64-66\n71\n");
        Assert.StartsWith("NOT BLIND", prompt.Must(0, ["review", prompt.Study]));
        Assert.Contains("without sealed codes", prompt.Must(1, ["seal", prompt.Study, "--paper"]));
        prompt.Predict(new SpecCode("862"));
        prompt.Must(0, [.. Reveal(prompt, [new SpecCode("417"), new SpecCode("862")]), "--control", "ALPHA"]);
        string report = Report(prompt);
        Assert.Contains("NOT BLIND", report.Split('\n')[0]);
        Assert.Contains("nobody could be spared", report);
    }

    [Fact]
    public void Seal_wants_a_list_and_a_key_file_or_paper_alone()
    {
        using AtThePrompt prompt = new();
        Assert.Contains("or '--paper' alone", prompt.Must(2, ["seal", prompt.Study, "--specs", "x"]));
        Assert.Contains("or '--paper' alone", prompt.Must(2, ["seal", prompt.Study, "--paper", "--key", "x"]));
    }

    private static string[] Reveal(AtThePrompt prompt, SpecCode[] codes) =>
        [
            "reveal",
            prompt.Study,
            "--paper",
            $"{codes[0]}=ALPHA",
            "--paper",
            $"{codes[1]}=BETA",
            "--mark",
            $"{codes[0]}=ALPHA",
            "--mark",
            $"{codes[1]}=BETA",
            "--reader",
            "Ro",
            "--reader",
            "Ilse",
        ];

    private static string Report(AtThePrompt prompt)
    {
        prompt.Must(0, ["report", prompt.Study, "--out", prompt.Here("report")]);
        return File.ReadAllText(prompt.Here("report/report.md"));
    }
}
