using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The example that docs/formulas.md works out step by step comes out of the program with the same figures.</summary>
public sealed partial class TheWorkedExampleTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "formulas.md"));

    [Fact]
    public void The_program_finds_every_figure_that_the_page_works_out()
    {
        using AtThePrompt prompt = new();
        string readings = prompt.Write("example.csv", AsReadings());
        using JsonDocument said = JsonDocument.Parse(
            prompt.Must(ExitCode.Done, ["compare", readings, "--reference", "A", "--margin", "1", "--json"])
        );
        JsonElement steady = said.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");
        Match[] figures = [.. Figure().Matches(Text).Cast<Match>()];
        Assert.Equal(13, figures.Length);
        Assert.All(
            figures,
            figure =>
            {
                string printed = figure.Groups[2].Value;
                double found = figure.Groups[1].Value.Split('.').Aggregate(steady, (part, member) => part.GetProperty(member)).GetDouble();
                Assert.True(printed == Rounded(found, printed), $"{figure.Groups[1].Value} is {found}, the page says {printed}");
            }
        );
        Assert.True(steady.GetProperty("drift_in_model").GetBoolean());
        Assert.False(steady.GetProperty("floor_applied").GetBoolean());
        Assert.Equal("difference shown", steady.GetProperty("verdict").GetString());
    }

    [Fact]
    public void The_means_of_its_runs_are_those_of_its_table()
    {
        string[][] rows = Rows();
        Assert.Equal(6, rows.Length);
        Assert.All(rows, row => Assert.Equal(row[6], row[3..6].Average(Number).ToString("0.0", CultureInfo.InvariantCulture)));
    }

    private static string[][] Rows() =>
        [
            .. Row()
                .Matches(Text)
                .Select(match => match.Value.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
        ];

    private static string AsReadings() =>
        "run,code,segment,kind,low,high,spoilt,minutes\n"
        + string.Concat(
            Rows()
                .SelectMany(row =>
                    Enumerable
                        .Range(1, 3)
                        .Select(segment => $"{row[0]},{row[1]},{segment},smooth,{row[segment + 2]},{row[segment + 2]},,{row[2]}\n")
                )
        );

    // With as many decimals as the page prints.
    private static string Rounded(double value, string printed)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        return value.ToString($"F{(point < 0 ? 0 : printed.Length - point - 1)}", CultureInfo.InvariantCulture);
    }

    private static double Number(string level) => double.Parse(level, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?m)^\| \d \| [AB] \| \d+ \|.*$")]
    private static partial Regex Row();

    [GeneratedRegex(@"(?m)^\| [^|]+ \| `([a-z_0-9.]+)` \| ([\d.]+) \|$")]
    private static partial Regex Figure();
}
