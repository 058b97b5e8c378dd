using System.Collections.Immutable;

namespace FieldSession.Tests.House;

/// <summary>A room can be seen at a glance: few files, and no way through them that comes back.</summary>
[Collection(HouseRules.Name)]
public sealed class RoomsTests(TheHouse house)
{
    private const int MostFiles = 25;
    private const int LongestCircle = 5;

    [Fact]
    public void No_folder_has_more_than_25_files() =>
        TheHouse.NoneOf(
            house
                .Sources.GroupBy(source => source.Folder)
                .Where(folder => folder.Count() > MostFiles)
                .Select(folder => $"{folder.Key}: {folder.Count()} files"),
            $"a folder has at most {MostFiles} files; more of them are sorted by subject"
        );

    [Fact]
    public void No_circle_runs_through_two_folders_or_more_than_5_files() =>
        TheHouse.NoneOf(
            from circle in Circles.In(house.FilesUsed)
            where circle.Length > LongestCircle || circle.Select(FolderOf).Distinct().Skip(1).Any()
            select $"{circle.Length} files: {string.Join(", ", circle)}",
            $"files that need each other lie in one folder, and are at most {LongestCircle}"
        );

    [Fact]
    public void A_circle_is_found()
    {
        ImmutableDictionary<string, ImmutableHashSet<string>> used = new Dictionary<string, ImmutableHashSet<string>>
        {
            ["a"] = ["b"],
            ["b"] = ["c", "d"],
            ["c"] = ["a"],
            ["d"] = [],
        }.ToImmutableDictionary();
        Assert.Equal("a b c", string.Join(' ', Assert.Single(Circles.In(used)).Order()));
    }

    private static string FolderOf(string path) => path[..path.LastIndexOf('/')];
}
