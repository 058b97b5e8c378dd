using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The handbook's day without screens is a whole day: its calls, in its order, lead to a report that is printed.</summary>
public sealed class TheSpokenDayTests
{
    private const string Section = "## A whole day without the screens";

    [Fact]
    public void The_day_without_screens_goes_from_the_plan_to_the_printed_report()
    {
        using AtThePrompt prompt = new();
        prompt.Write("PLAN_DIR/plan.toml", AWholeDay.Plan);
        prompt.Write("PLAN_DIR/route.csv", AWholeDay.Route);
        prompt.Must(
            0,
            [
                "seal",
                prompt.Here("PLAN_DIR"),
                "--specs",
                prompt.Write("specs.txt", "ALPHA\nBETA\n"),
                "--key",
                prompt.Here("custodian.key"),
                "--public",
                prompt.Here("day.codes"),
            ]
        );
        List<string> done = [];
        string said = "";
        foreach (string call in Calls())
        {
            string[] words =
            [
                .. call.Split(' ')[1..]
                    .Select(word => word.Contains('.', StringComparison.Ordinal) || word == "PLAN_DIR" ? prompt.Here(word) : word),
            ];
            said = Follow(words, prompt);
            done.Add(words[0]);
            Assert.DoesNotMatch("[▀▄█├┤]", words[0] == "review" ? "" : said);
        }

        Assert.Equal(["start", "codes", "enter", "review", "predict", "reveal", "report"], done);
        Assert.Contains("ALPHA", said, StringComparison.Ordinal);
        Assert.Contains("## ", said, StringComparison.Ordinal);
        Assert.False(Directory.Exists(prompt.Here("-")));
    }

    private static IEnumerable<string> Calls() =>
        File.ReadAllLines(Path.Combine(Repository.Root, "docs/handbook.md"))
            .SkipWhile(line => line != Section)
            .Skip(1)
            .TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal))
            .Where(line => line.StartsWith("    fieldsession ", StringComparison.Ordinal))
            .Select(line => line.Split('#')[0].Trim());

    private static string Follow(string[] words, AtThePrompt prompt)
    {
        switch (words[0])
        {
            case "enter":
                prompt.Enter(AWholeDay.Ready).Drive(6).Enter("calibration after 94.0\n");
                return "";
            case "predict":
                return prompt.Must(0, words, string.Concat(Enumerable.Repeat($"{prompt.Now().Codes.ElementAt(1)}\n4\n\n\nsound\n", 2)));
            case "reveal":
                Dictionary<SpecCode, string> marks = prompt.SpecsIn("custodian.key");
                return prompt.Must(
                    0,
                    words,
                    string.Join('\n', [.. prompt.Now().DrivenCodes.Select(code => marks[code]), "Ro", "Ilse"]) + "\n"
                );
            default:
                return prompt.Must(0, words);
        }
    }
}
