using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.House;

/// <summary>What docs/architecture.md says of rooms and figures is held against the source as it is.</summary>
[Collection(HouseRules.Name)]
public sealed partial class TheHouseInFiguresTests(TheHouse house)
{
    private const string Document = "docs/architecture.md";

    // a figure may be a tenth off, so that not every change has to count the house again
    private const double Slack = 0.1;

    [Fact]
    public void The_rooms_are_drawn_from_the_source()
    {
        IEnumerable<string> rooms = house
            .Program.Where(source => source.Namespace.Length > 0)
            .Select(source => source.Namespace)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .Select(room => $"| {Short(room)} | {LeansOn(room)} |\n");
        Golden.ApprovePart(Document, "rooms", $"| room | leans on |\n|---|---|\n{string.Concat(rooms)}");
    }

    [Fact]
    public void The_figures_of_the_house_are_those_of_the_document()
    {
        int[] lines = [.. house.Program.Select(source => source.Lines).Order()];
        Dictionary<string, int> counted = new()
        {
            ["files of the program"] = lines.Length,
            ["lines of the file in the middle"] = lines[lines.Length / 2],
            ["lines of the longest file"] = lines[^1],
            ["files in the fullest folder"] = house.Program.GroupBy(source => source.Folder).Max(folder => folder.Count()),
            ["files in the longest circle"] = Circles.In(house.FilesUsed).Max(circle => circle.Length),
            ["files that one other file alone uses"] = house
                .FilesUsed.SelectMany(file => file.Value)
                .CountBy(used => used)
                .Count(used => used.Value == 1),
            ["lines wider than 140 columns"] = house.Sources.Sum(source => source.Text.Split('\n').Count(line => line.Length > 140)),
        };
        Dictionary<string, int> told = Row()
            .Matches(File.ReadAllText(Path.Combine(Repository.Root, Document)))
            .ToDictionary(row => row.Groups[1].Value, row => int.Parse(row.Groups[2].Value, CultureInfo.InvariantCulture));
        TheHouse.NoneOf(
            from figure in counted
            let document = told.GetValueOrDefault(figure.Key, -1)
            where Math.Abs(document - figure.Value) > Slack * figure.Value
            select $"{figure.Key}: {figure.Value}, the document has {document}",
            $"{Document} has the figures of the house"
        );
    }

    private static string Short(string room) => room == "FieldSession" ? "the hall" : room["FieldSession.".Length..];

    private string LeansOn(string room) =>
        string.Join(
            ", ",
            house
                .Uses.Where(use => use.IsOurs && use.Source.Namespace == room && use.Namespace != room && use.Namespace.Length > 0)
                .Select(use => Short(use.Namespace))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    // "| what | before | now |"
    [GeneratedRegex(@"^\| ([a-z][^|]*?) \| [\d,]+ \| (\d+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
