using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Making;

/// <summary>Where the files beside the tests lie.</summary>
internal static class Repository
{
    public static string Root => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", ".."));

    public static string Tests => Path.Combine(Root, "tests", "FieldSession.Tests");

    private static string Here([CallerFilePath] string file = "") => file;
}
