using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.EnergyDriving;

/// <summary>Nobody drives the route: the days ask for the range alone.</summary>
public class AStudyOfEnergyDaysAloneTests
{
    [Fact]
    public void It_goes_from_the_legs_to_the_report_with_the_names_in_it()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        SpecCode[] codes = [.. prompt.Now().Codes];
        Assert.Contains("nothing has been driven", prompt.Must(1, ["enter", prompt.Study], $"predict Ro feature={codes[0]} sure=3\n"));
        prompt.Enter(Days(codes[0], codes[1], first: 1));
        prompt.Enter($"predict Ro feature={codes[1]} sure=3\npredict Tam feature={codes[1]} sure=4\n");

        prompt.Must(0, prompt.RevealWords("a.key"));

        Assert.Equal(Stage.Revealed, prompt.Now().Stage);
        Assert.Contains($"BETA ({Beta(prompt, "a.key")}) against ALPHA", Report(prompt));
    }

    [Fact]
    public void Compare_holds_its_codes_against_any_of_them_and_says_nothing_of_levels()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        SpecCode[] codes = [.. prompt.Now().Codes];
        string none = prompt.Must(2, ["compare", prompt.Study, "--reference", codes[1].Digits]);
        Assert.Contains("nothing has been driven yet", none, StringComparison.Ordinal);
        prompt.Enter(Days(codes[0], codes[1], first: 1));

        string said = prompt.Must(0, ["compare", prompt.Study, "--reference", codes[1].Digits]);
        Assert.Contains($"Energy days, reference {codes[1]}", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Blind comparison", said, StringComparison.Ordinal);
        string stranger = prompt.Must(2, ["compare", prompt.Study, "--reference", "999"]);
        Assert.Contains($"the codes are {codes[0]}, {codes[1]}", stranger, StringComparison.Ordinal);
    }

    [Fact]
    public void Codes_of_two_fittings_that_meant_one_spec_are_compared_together_after_the_reveal()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        SpecCode[] first = [.. prompt.Now().Codes];
        prompt.Enter(Days(first[0], first[1], first: 1));
        prompt.Must(0, ["seal", prompt.Study, "--specs", prompt.Here("specs.txt"), "--key", prompt.Here("b.key")]);
        SpecCode[] second = [.. prompt.Now().Fitting!.Codes];
        prompt.Enter(Days(second[0], second[1], first: 3));
        prompt.Enter($"predict Ro feature={first[1]} sure=3\npredict Tam feature={first[1]} sure=4\n");

        prompt.Must(0, prompt.RevealWords("a.key", "b.key"));

        string report = Report(prompt);
        Assert.Contains($"BETA ({Beta(prompt, "a.key")}, {Beta(prompt, "b.key")}) against ALPHA", report);
        Assert.Contains("| 4 | 800 km |", report);
    }

    private static SpecCode Beta(AtThePrompt prompt, string key) => prompt.SpecsIn(key).Single(pair => pair.Value == "BETA").Key;

    private static string Report(AtThePrompt prompt)
    {
        prompt.Must(0, ["report", prompt.Study, "--out", prompt.Here("report")]);
        return File.ReadAllText(prompt.Here("report/report.md"));
    }

    // Two days, two cars side by side, tyres swapped between the days.
    private static string Days(SpecCode one, SpecCode other, int first) =>
        $"""
            leg day={first} car=X code={one} km=200 kwh=36.0
            leg day={first} car=Y code={other} km=200 kwh=37.1
            leg day={first + 1} car=X code={other} km=200 kwh=36.9
            leg day={first + 1} car=Y code={one} km=200 kwh=36.2

            """;
}
