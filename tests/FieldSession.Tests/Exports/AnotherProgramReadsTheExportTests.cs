using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Exports;

public sealed class AnotherProgramReadsTheExportTests
{
    [SqliteFact]
    public void Sqlite_finds_the_same_counts_and_sums_as_the_study_has()
    {
        using ExportedDay exported = new(ExportedDay.Untidy());
        double levels = exported
            .Day.Study.Runs.SelectMany(run => run.Readings)
            .Sum(reading => reading.Levels.LowDb + reading.Levels.HighDb);
        string[] found = Sqlite(
                exported.Path("readings.csv"),
                "select count(*), sum(low <> ''), sum(low = ''), sum(spoilt <> ''), printf('%.6f', sum(low) + sum(high)) from t"
            )
            .Split('|');
        int read = exported.Day.Study.Runs.Sum(run => run.Readings.Count());
        int spoilt = ExportSourceOf(exported).Day.Levels.Count(level => level.Spoilt);
        Assert.Equal([$"{read + 3}", $"{read}", "3", $"{spoilt}"], found[..4]);
        Assert.Equal(levels, double.Parse(found[4], CultureInfo.InvariantCulture), 5);
    }

    private static Store.Exports.ExportSource ExportSourceOf(ExportedDay exported) => Store.Exports.ExportSource.Of(exported.Day.Book);

    private static string Sqlite(string csv, string query)
    {
        ProcessStartInfo start = new(
            "sqlite3",
            [":memory:", "-cmd", ".mode csv", "-cmd", $".import '{csv}' t", "-cmd", ".mode list", query]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process sqlite = Process.Start(start)!;
        string output = sqlite.StandardOutput.ReadToEnd();
        string error = sqlite.StandardError.ReadToEnd();
        sqlite.WaitForExit();
        Assert.True(sqlite.ExitCode == 0 && error.Length == 0, error);
        return output.Trim();
    }
}

/// <summary>A test that runs where the program sqlite3 is on the path; Rfc4180 reads the same files everywhere.</summary>
internal sealed class SqliteFactAttribute : FactAttribute
{
    public SqliteFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line)
    {
        string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        if (!folders.Any(folder => File.Exists(Path.Combine(folder, "sqlite3"))))
        {
            Skip =
                "sqlite3 is not on this computer; the same counts and sums are checked by a reader of our own in "
                + "ExportedReadingsCompareTheSameTests";
        }
    }
}
