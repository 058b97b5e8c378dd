using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The day that docs/why-blind.md works out with a pocket calculator comes out of the program with the same figures.</summary>
public sealed partial class TheExampleByHandTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "why-blind.md"));

    [Fact]
    public void The_program_finds_the_difference_the_error_and_the_interval_that_the_page_works_out()
    {
        using AtThePrompt prompt = new();
        string readings = prompt.Write("by-hand.csv", AsReadings());
        using JsonDocument said = JsonDocument.Parse(prompt.Must(ExitCode.Done, ["compare", readings, "--reference", "A", "--json"]));
        JsonElement steady = said.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");
        JsonElement overall = steady.GetProperty("overall");
        Assert.Equal("1.00", Rounded(overall, "d"));
        Assert.Equal(2, overall.GetProperty("df").GetDouble(), 9);
        Assert.Equal("0.29", Rounded(overall, "se"));
        Assert.Equal(Interval().Match(Text).Groups[1].Value, Rounded(overall, "lo95"));
        Assert.Equal(Interval().Match(Text).Groups[2].Value, Rounded(overall, "hi95"));
    }

    [Fact]
    public void The_means_of_its_runs_are_those_of_its_table()
    {
        foreach (string[] row in Rows())
        {
            double mean = row[2..5].Average(level => double.Parse(level, CultureInfo.InvariantCulture));
            Assert.Equal(row[5], mean.ToString("0.0", CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void The_tempting_way_has_the_differences_by_segment_and_the_small_error_that_it_tells()
    {
        double[] bySegment = [.. Enumerable.Range(2, 3).Select(segment => MeanOf("B", segment) - MeanOf("A", segment))];
        string[] told = [.. Tempting().Match(Text).Groups.Values.Skip(1).Select(group => group.Value)];
        string[] worked = [.. bySegment.Select(AsTold)];
        Assert.Equal(worked, told[..3]);
        double mean = bySegment.Average();
        double error = Math.Sqrt(bySegment.Sum(difference => (difference - mean) * (difference - mean)) / 2 / 3);
        Assert.Equal(AsTold(error), told[3]);
    }

    private static double MeanOf(string code, int segment) =>
        Rows().Where(row => row[1] == code).Average(row => double.Parse(row[segment], CultureInfo.InvariantCulture));

    private static string AsTold(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    private static string[][] Rows() =>
        [
            .. Row()
                .Matches(Text)
                .Select(match => match.Value.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
        ];

    private static string AsReadings() =>
        "run,code,segment,kind,low,high,spoilt\n"
        + string.Concat(
            Rows()
                .SelectMany(row =>
                    Enumerable.Range(1, 3).Select(segment => $"{row[0]},{row[1]},{segment},smooth,{row[segment + 1]},{row[segment + 1]},\n")
                )
        );

    private static string Rounded(JsonElement line, string member) =>
        line.GetProperty(member).GetDouble().ToString("0.00", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?m)^\| \d \| [AB] \|.*$")]
    private static partial Regex Row();

    [GeneratedRegex(
        @"differences are ([\d.]+), ([\d.]+) and ([\d.]+) dB[^.]*\. Treat these as three independent proofs and their error is ([\d.]+) dB"
    )]
    private static partial Regex Tempting();

    [GeneratedRegex(@"between \*\*(-[\d.]+) and \+([\d.]+) dB\*\*")]
    private static partial Regex Interval();
}
