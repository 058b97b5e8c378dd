using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>What the README shows of the program is what the program shows.</summary>
public sealed class TheReadmeTests
{
    private const string Readme = "README.md";

    [Fact]
    public void It_shows_a_reading_the_drive_screen_the_answer_card_and_the_report_as_pictures()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Root, Readme));
        string[] shown =
        [
            "docs/pictures/reading.svg",
            "docs/pictures/drive.svg",
            "docs/pictures/answer.svg",
            "docs/pictures/report-wide.png",
        ];
        Assert.All(shown, picture => Assert.Contains($"]({picture})", text, StringComparison.Ordinal));
        Assert.All(
            [.. shown, "docs/pictures/reading.cast", "docs/sample/report.html"],
            file =>
            {
                Assert.Contains(file, text, StringComparison.Ordinal);
                Assert.True(File.Exists(Path.Combine(Repository.Root, file)), file);
            }
        );
    }

    [Fact]
    public void Its_study_of_one_s_own_goes_from_plan_to_report()
    {
        using AtThePrompt prompt = new();
        string[] calls =
        [
            .. new Page(Readme)
                .Calls.Where(call => call.Contains(" # ", StringComparison.Ordinal))
                .Select(call => call.Split('#')[0].TrimEnd()),
        ];
        Assert.Equal(
            ["start", "seal", "fitting", "codes", "drive", "review", "predict", "reveal", "report"],
            calls.Select(call => call.Split(' ')[1])
        );
        prompt.Write("PLAN_DIR/plan.toml", AWholeDay.Plan);
        prompt.Write("PLAN_DIR/route.csv", AWholeDay.Route);
        prompt.Write("specs.txt", "ALPHA\nBETA\n");
        foreach (string call in calls)
        {
            string[] words =
            [
                .. call.Split(' ')[1..]
                    .Select(word =>
                        word.Contains('.', StringComparison.Ordinal) || word is "PLAN_DIR" or "report" ? prompt.Here(word) : word
                    ),
            ];
            words[0] = call.Split(' ')[1];
            Follow(words, prompt);
        }

        Assert.Contains("ALPHA", File.ReadAllText(prompt.Here("report/report.md")), StringComparison.Ordinal);
    }

    // The screens are driven by lines here; the questions of the evening are answered as a crew answers them.
    private static void Follow(string[] words, AtThePrompt prompt)
    {
        switch (words[0])
        {
            case "drive":
                prompt.Enter(AWholeDay.Ready).Drive(6).Enter("calibration after 94.0\n");
                break;
            case "predict":
                prompt.Must(0, words, string.Concat(Enumerable.Repeat($"{prompt.Now().Codes.ElementAt(1)}\n4\n\n\nsound\n", 2)));
                break;
            case "reveal":
                Dictionary<State.SpecCode, string> marks = prompt.SpecsIn("custodian.key");
                string[] read = [.. prompt.Now().DrivenCodes.Select(code => marks[code]), "Ro", "Ilse"];
                prompt.Must(0, words, string.Join('\n', read) + "\n");
                break;
            case "fitting":
                prompt.Must(0, [.. words, "--csv"]);
                break;
            default:
                prompt.Must(0, words);
                break;
        }
    }
}
