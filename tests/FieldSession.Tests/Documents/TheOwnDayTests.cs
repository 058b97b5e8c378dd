using System.Globalization;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>
/// The page about a crew's first own day is followed in order: its plan, its commands, its typed lines, up to the report.
/// </summary>
public sealed class TheOwnDayTests : IDisposable
{
    private const string Document = "docs/own-day.md";

    // The joint is the third segment of the page's route.
    private const int Impact = 2;

    private readonly AtThePrompt _prompt = new(5);

    private string Study => _prompt.Here("hazel.study");

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void Its_plan_and_commands_lead_to_a_report_that_names_the_specs()
    {
        _prompt.Write("pia/specs.txt", "BASE\nNEW\n");
        List<string> done = [];
        foreach (Fence fence in new Page(Document).Fences)
        {
            switch (fence.Word)
            {
                case ['f', 'i', 'l', 'e', ' ', .. string file]:
                    _prompt.Write(file, string.Join('\n', fence.Lines) + "\n");
                    _prompt.Write(file.Replace("own/", "pia/plan/", StringComparison.Ordinal), string.Join('\n', fence.Lines) + "\n");
                    break;
                case "sh":
                    fence.Lines.ToList().ForEach(line => done.Add(Types(line.Split(' ')[1..])));
                    break;
                default:
                    Assert.Equal("lines", fence.Word);
                    Takes(fence);
                    break;
            }
        }

        Assert.Equal(
            [
                "size",
                "orders",
                "tyre",
                "paper",
                "start",
                "seal",
                "keycheck",
                "codes",
                "fitting",
                "drive",
                "review",
                "predict",
                "reveal",
                "report",
                "verify",
                "export",
            ],
            done
        );
        Assert.Contains("NEW was", File.ReadAllText(_prompt.Here("report/report.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_hours_the_changes_of_tyres_and_the_runs_that_it_tells_are_those_of_the_program()
    {
        foreach (Fence fence in new Page(Document).Fences.Where(fence => fence.Word.StartsWith("file", StringComparison.Ordinal)))
        {
            _prompt.Write(fence.Word["file ".Length..], string.Join('\n', fence.Lines) + "\n");
        }

        Assert.Contains(
            "8 runs, 4 h 57 min, tyres changed 4 times",
            _prompt.Must(0, ["orders", _prompt.Here("own")]),
            StringComparison.Ordinal
        );
        Assert.Contains("with a chance of 80 %: 5 runs per code", _prompt.Must(0, ["size", "--difference", "1"]), StringComparison.Ordinal);
    }

    private string Types(string[] words)
    {
        string[] lying = [words[0], .. words[1..].Select(Lying)];
        switch (words[0])
        {
            case "drive":
                break;
            case "fitting":
                _prompt.Must(0, [.. lying, "--csv"]);
                break;
            case "predict":
                string one = $"{Now().Codes.ElementAt(1)}\n4\n\n\nsound\n";
                _prompt.Must(0, lying, one + one);
                break;
            case "reveal":
                _prompt.Must(0, lying, string.Join('\n', [.. MarksAsDriven(), "Mara", "Pia"]) + "\n");
                break;
            case "codes":
                File.Copy(_prompt.Here("pia/hazel.codes"), _prompt.Here("hazel.codes"));
                _prompt.Must(0, lying);
                break;
            default:
                _prompt.Must(0, lying);
                break;
        }

        return words[0];
    }

    // The first lines come before run 1, the last one after run 8.
    private void Takes(Fence fence)
    {
        if (fence.Lines[0].StartsWith("calibration after", StringComparison.Ordinal))
        {
            Enumerable.Range(0, 8).ToList().ForEach(Drives);
        }

        _prompt.Must(0, ["enter", Study], string.Join('\n', fence.Lines) + "\n");
    }

    private void Drives(int run)
    {
        double more = (Now().CodeAsked == Now().Codes.ElementAt(1) ? 2 : 0) + (run % 3 * 0.2);
        string[] levels =
        [
            .. new[] { 56.0, 65, 71, 64, 66, 60 }.Select(
                (level, segment) => segment == Impact ? Number(level + more) : $"{Number(level + more)}-{Number(level + more + 3)}"
            ),
        ];
        _prompt.Must(0, ["enter", Study], $"run {Now().CodeAsked}\n{string.Join('\n', levels)}\n");
    }

    private static string Number(double level) => level.ToString("0.0", CultureInfo.InvariantCulture);

    private Study Now() => Logbook.Fold(JournalCheck.Of(Study).LinesToFirstFailing);

    private string[] MarksAsDriven()
    {
        Dictionary<SpecCode, string> marks = _prompt
            .Outside()
            .KeyFile.Open(_prompt.Here("pia/hazel.key"), AtThePrompt.Passphrase)
            .Key!.Places.ToDictionary(line => line.Code, line => line.UnderTape);
        return [.. Now().DrivenCodes.Select(code => marks[code])];
    }

    private string Lying(string word) =>
        word is "own" or "sheets" or "report" or "tables"
        || word.StartsWith("pia/", StringComparison.Ordinal)
        || word.StartsWith("hazel.", StringComparison.Ordinal)
            ? _prompt.Here(word)
            : word;
}
