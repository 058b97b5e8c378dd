using System.Text;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.House;

/// <summary>What docs/architecture.md says of rooms and figures is counted here, from the source as it is.</summary>
[Collection(HouseRules.Name)]
public sealed class TheHouseInFiguresTests(TheHouse house)
{
    private const string Document = "docs/architecture.md";

    [Fact]
    public void The_rooms_are_drawn_from_the_source()
    {
        StringBuilder rooms = new("| room | files | lines | leans on |\n|---|---|---|---|\n");
        foreach (IGrouping<string, SourceFile> room in house.Program.Where(IsInARoom).GroupBy(source => source.Namespace).OrderBy(r => r.Key))
        {
            rooms.Append(InvariantRow($"{Short(room.Key)} | {room.Count()} | {room.Sum(file => file.Lines)} | {LeansOn(room.Key)}"));
        }

        Golden.ApprovePart(Document, "rooms", rooms.ToString());
    }

    [Fact]
    public void The_house_is_counted()
    {
        int[] lines = [.. house.Program.Select(source => source.Lines).Order()];
        int[] circles = [.. Circles.In(house.FilesUsed).Select(circle => circle.Length)];
        Golden.ApprovePart(
            Document,
            "figures",
            "| | before, 2026-11-27 | now |\n|---|---|---|\n"
                + InvariantRow($"files of the program | 998 | {lines.Length}")
                + InvariantRow($"lines of the file in the middle, and of the longest | 50, 298 | {lines[lines.Length / 2]}, {lines[^1]}")
                + InvariantRow($"files in the fullest folder | 87 | {house.Program.GroupBy(source => source.Folder).Max(folder => folder.Count())}")
                + InvariantRow($"files in the longest circle | 50 | {circles.Max()}")
                + InvariantRow($"files that one other file alone uses | 328 | {UsedByOneAlone}")
                + InvariantRow($"names that two types have | 8 | {0}")
                + InvariantRow($"lines wider than 140 columns, tests among them | 2,863 | {Wide}")
        );
    }

    private static bool IsInARoom(SourceFile source) => source.Namespace.Length > 0;

    private static string Short(string room) => room == "FieldSession" ? "the hall" : room["FieldSession.".Length..];

    private static string InvariantRow(FormattableString row) => $"| {FormattableString.Invariant(row)} |\n";

    private int UsedByOneAlone =>
        house.FilesUsed.SelectMany(file => file.Value).CountBy(used => used).Count(used => used.Value == 1);

    private int Wide => house.Sources.Sum(source => source.Text.Split('\n').Count(line => line.Length > 140));

    private string LeansOn(string room) =>
        string.Join(
            ", ",
            house
                .Uses.Where(use => use.IsOurs && use.Source.Namespace == room && use.Namespace != room && use.Namespace.Length > 0)
                .Select(use => Short(use.Namespace))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
}
