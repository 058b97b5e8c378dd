using System.Text.Json;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>Every package that the program carries along is named with its licence.</summary>
public sealed class LicencesTests
{
    [Fact]
    public void Every_package_in_the_program_has_its_notice_with_the_version_that_is_built_in()
    {
        string[] notices = File.ReadAllLines(Path.Combine(Repository.Root, "docs/licences.md"));
        string[] carried = [.. Carried()];
        Assert.True(carried.Length > 15, $"only {carried.Length} packages were found in what the build restored");
        TheHouse.NoneOf(
            carried.Where(row => !notices.Any(line => line.StartsWith(row, StringComparison.Ordinal))),
            "docs/licences.md has a row for every package in the program, with its version"
        );
    }

    [Fact]
    public void The_program_prints_the_notices()
    {
        using AtThePrompt prompt = new();
        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Root, "docs/licences.md")), prompt.Must(0, ["licences"]));
    }

    // What a restore of the program's project found; only packages that put files beside the program.
    private static IEnumerable<string> Carried()
    {
        using JsonDocument restored = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(Repository.Root, ".artifacts/obj/FieldSession.Terminal/project.assets.json"))
        );
        return
        [
            .. from target in restored.RootElement.GetProperty("targets").EnumerateObject()
            from library in target.Value.EnumerateObject()
            where
                library.Value.GetProperty("type").GetString() == "package"
                && (library.Value.TryGetProperty("runtime", out _) || library.Value.TryGetProperty("runtimeTargets", out _))
            select $"| {library.Name.Replace("/", " | ", StringComparison.Ordinal)} | ",
        ];
    }
}
