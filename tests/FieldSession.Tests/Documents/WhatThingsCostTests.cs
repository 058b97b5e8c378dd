using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The table of what things cost is the one that the command wrote, of a named day, commit and machine.</summary>
public sealed class WhatThingsCostTests
{
    private static string Table
    {
        get
        {
            string text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "benchmarks.md"));
            string source = File.ReadAllText(Path.Combine(Repository.Root, "tests", "FieldSession.Benchmarks", "AllFigures.cs"));
            (string begin, string end) = ("<!-- written by '-- all' from here -->", "<!-- to here -->");
            Assert.Contains($"\"{begin}\"", source, StringComparison.Ordinal);
            Assert.Contains($"\"{end}\"", source, StringComparison.Ordinal);
            return text.Split(begin)[1].Split(end)[0];
        }
    }

    [Fact]
    public void It_says_day_commit_machine_and_how_busy_it_was() =>
        Assert.Matches(
            @"^\s*\d{4}-\d{2}-\d{2}, commit [0-9a-f]{7,}; \d+ cores of .+ GB, .+, files on \w+, \.NET 10.+; load [0-9.]+ before, [0-9.]+ after\.\s",
            Table
        );

    [Theory]
    [InlineData("start to the first whole frame")]
    [InlineData("all keys of a reading and its undo")]
    [InlineData("memory after these keys")]
    [InlineData("idle, of one core")]
    [InlineData("an act on the disk, 5 ms after the last")]
    [InlineData("the whole comparison, 14 x 12")]
    [InlineData("`compare` of a CSV with 1,000,000 readings")]
    [InlineData("a study of 1,000,000 readings opened")]
    [InlineData("`merge` of two laptops, 1,000")]
    [InlineData("`report` of the demo day")]
    [InlineData("`archive` of 1,000 studies with its index")]
    public void Every_figure_has_median_spread_and_what_limits_it(string what)
    {
        string row = Assert.Single(Table.Split('\n'), line => line.StartsWith($"| {what}", StringComparison.Ordinal));
        string[] cells = [.. row.Split('|')[1..^1].Select(cell => cell.Trim())];
        Assert.Equal(8, cells.Length);
        Assert.Matches(@"^[0-9.]+ (ms|MB|%)$", cells[2]);
        Assert.Matches("^[0-9.]+ to [0-9.]+$", cells[3]);
        Assert.NotEqual("", cells[7]);
    }
}
