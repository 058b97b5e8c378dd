namespace FieldSession.Tests.Making;

/// <summary>
/// Text that somebody has looked at and approved. Where the program now says something else, look at it, and if it is
/// better, run the tests once with FIELDSESSION_APPROVE=1.
/// </summary>
internal static class Golden
{
    public const string Variable = "FIELDSESSION_APPROVE";
    private const int LinesShown = 5;

    /// <summary>Holds a text against an approved file, named from the top of the repository.</summary>
    public static void Approve(string file, string actual)
    {
        string path = Path.Combine(Repository.Root, file);
        if (Environment.GetEnvironmentVariable(Variable) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
            return;
        }

        string approved = File.Exists(path) ? File.ReadAllText(path) : "";
        Assert.True(
            approved == actual,
            $"{file} is not what the program says now. To accept it, run '{Variable}=1 dotnet test' and look at the change.\n"
                + FirstDifference(approved.Split('\n'), actual.Split('\n'))
        );
    }

    /// <summary>Holds a part of a document against what the program says: what is between the two remarks that name it.</summary>
    public static void ApprovePart(string file, string part, string actual)
    {
        string path = Path.Combine(Repository.Root, file);
        (string begin, string end) = ($"<!-- {part}: made by the tests -->\n", $"<!-- end of {part} -->");
        string whole = File.ReadAllText(path);
        int from = whole.IndexOf(begin, StringComparison.Ordinal) + begin.Length;
        int to = whole.IndexOf(end, StringComparison.Ordinal);
        Assert.True(from >= begin.Length && to >= from, $"{file} has no part '{part}'");
        Approve(file, $"{whole[..from]}{actual}{whole[to..]}");
    }

    /// <summary>The first lines that differ, with their number and the line before them.</summary>
    internal static string FirstDifference(string[] approved, string[] actual)
    {
        int same = approved.Zip(actual).TakeWhile(pair => pair.First == pair.Second).Count();
        string before = same == 0 ? "" : $"line {same}, alike: {actual[same - 1]}\n";
        return $"{before}line {same + 1}, now:\n{Some(actual, same)}\nline {same + 1}, approved:\n{Some(approved, same)}";
    }

    private static string Some(string[] lines, int from) => string.Join('\n', lines.Skip(from).Take(LinesShown));
}
