namespace FieldSession.Tests.Making;

/// <summary>
/// Text that somebody has looked at and approved. Where the program now says something else, look at it, and if it is
/// better, run the tests once with FIELDSESSION_APPROVE=1.
/// </summary>
internal static class Golden
{
    public const string Variable = "FIELDSESSION_APPROVE";

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
            $"{file} is not what the program says now. To accept it, run 'FIELDSESSION_APPROVE=1 dotnet test' and look at the "
                + $"change.\n--- now:\n{actual}\n--- approved:\n{approved}"
        );
    }
}
