using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>The files in docs/team.</summary>
internal static class TeamFiles
{
    /// <summary>The path of a file.</summary>
    public static string Path(string file) => System.IO.Path.Combine(Repository.Root, "docs/team", file);

    /// <summary>The kept questions by number, each one statement.</summary>
    public static IReadOnlyDictionary<int, string> Questions { get; } =
        File.ReadAllText(Path("questions.sql"))
            .Split("\n\n")
            .Where(part => part.Contains(';', StringComparison.Ordinal))
            .ToDictionary(
                part => int.Parse(part.TrimStart('-', ' ').Split('.')[0], System.Globalization.CultureInfo.InvariantCulture),
                part => part.Trim()
            );
}
