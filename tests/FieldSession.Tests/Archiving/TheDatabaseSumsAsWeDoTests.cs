using System.Diagnostics;
using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>The schema of docs/team.md, loaded with exports into a real PostgreSQL: its sums are ours.</summary>
public sealed class TheDatabaseSumsAsWeDoTests
{
    [FactWithPostgres]
    public void Exports_are_loaded_twice_and_every_sum_is_that_of_the_program()
    {
        using AnArchive archive = new();
        archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        using APostgres database = new();
        database.Run("psql", "-q", "-X", "-v", "ON_ERROR_STOP=1", "-f", InTeam("schema.sql"));
        string[] folders = [.. new[] { "AR-1", "AR-2" }.Select(study => Exported(archive.Prompt, study))];
        database.Run("bash", [InTeam("load.sh"), .. folders]);
        database.Run("bash", [InTeam("load.sh"), .. folders]);

        foreach (string study in new[] { "AR-1", "AR-2" })
        {
            FieldSession.State.Study told = Logbook.Fold(Store.Journaling.ReadStudy.At(archive.Prompt.Here($"archive/{study}.study")).Lines);
            MeasuredLevel[] levels = [.. StudyReadings.Of(told).Levels];
            MeasuredLevel[] counted = [.. levels.Where(level => !level.Spoilt)];
            Assert.Equal(
                string.Create(CultureInfo.InvariantCulture, $"{told.Runs.Count}|{levels.Length}|{counted.Length}|{counted.Sum(level => level.LevelDb):0.000}"),
                database.Ask($"SELECT (SELECT count(*) FROM run WHERE study = '{study}'), (SELECT count(high) FROM reading WHERE study = '{study}'), count(*), to_char(sum(level_db), 'FM9999990.000') FROM level WHERE study = '{study}'"));
            double d = double.Parse(database.Ask($"SELECT comparison->'comparisons'->0->'classes'->'steady'->'overall'->>'d' FROM study WHERE study = '{study}'"), CultureInfo.InvariantCulture);
            Assert.Equal(Comparison.InFull(StudyReadings.Of(told), StudyTerms.Of(told)).Comparisons[0].Classes.Steady!.Overall!.DifferenceDb, d, 12);
        }

        Assert.Equal("ear|2\nmeter|2\nworth|2", database.Ask("SELECT line, count(*) FROM verdict GROUP BY line ORDER BY line").Trim());
        FieldSession.Archiving.ArchiveSum steady = FieldSession.Archiving.ArchiveSum.Of(Store.Archiving.ArchiveFolder.Read(archive.Folder).Studies)
            .First(sum => sum is { By: "class", Group: "steady" });
        string answers = database.Run("psql", "-X", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-f", InTeam("questions.sql"));
        string[] repeat = answers.Split('\n').First(line => line.StartsWith("steady|", StringComparison.Ordinal)).Split('|');
        Assert.Equal(steady.RunSdDb!.Value, double.Parse(repeat[1], CultureInfo.InvariantCulture), 12);
        Assert.Equal(steady.NuRun, double.Parse(repeat[2], CultureInfo.InvariantCulture));
        Assert.Contains("STIFFENED", answers, StringComparison.Ordinal);
    }

    private static string InTeam(string file) => Path.Combine(Repository.Root, "docs/team", file);

    private static string Exported(AtThePrompt prompt, string study)
    {
        prompt.Must(ExitCode.Done, ["export", prompt.Here($"archive/{study}.study"), "--out", prompt.Here($"out/{study}")]);
        return prompt.Here($"out/{study}");
    }
}

/// <summary>A test that needs PostgreSQL on this machine; where it is not, it is passed over and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FactWithPostgresAttribute : FactAttribute
{
    public FactWithPostgresAttribute()
    {
        string? missing = new[] { "initdb", "pg_ctl", "psql", "bash" }.FirstOrDefault(program => APostgres.Find(program) is null);
        if (missing is not null)
        {
            Skip = $"'{missing}' is not on this machine: install PostgreSQL (Debian: postgresql) to try the schema of docs/team.md";
        }
    }
}

/// <summary>A PostgreSQL of its own in a temporary folder, reached by a socket there and by nothing else.</summary>
internal sealed class APostgres : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-pg").FullName;

    public APostgres()
    {
        if (IsRoot)
        {
            // PostgreSQL does not start as root
            Run("chmod", "755", _folder);
            Run("chown", "postgres", _folder);
        }

        AsServer("initdb", "-D", $"{_folder}/db", "-U", "postgres", "--auth=trust", "--no-sync");
        AsServer("pg_ctl", "-D", $"{_folder}/db", "-o", $"-c listen_addresses='' -k {_folder}", "-w", "-l", $"{_folder}/log", "start");
    }

    private static bool IsRoot => Environment.UserName == "root";

    /// <summary>Where a program lies; null: nowhere.</summary>
    public static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':')
        .Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);

    /// <summary>The one line that a query answers.</summary>
    public string Ask(string query) => Run("psql", "-X", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-c", query).Trim();

    /// <summary>Runs a program beside the server, and gives what it put out.</summary>
    public string Run(string program, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, RedirectStandardError = true };
        (start.Environment["PGHOST"], start.Environment["PGUSER"], start.Environment["PGDATABASE"]) = (_folder, "postgres", "postgres");
        using Process process = Process.Start(start)!;
        Task<string> faults = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', words)} ended with {process.ExitCode}: {faults.Result}{output}");
        return output;
    }

    public void Dispose()
    {
        AsServer("pg_ctl", "-D", $"{_folder}/db", "-m", "immediate", "-w", "stop");
        Directory.Delete(_folder, recursive: true);
    }

    // a started server keeps the streams of whoever started it
    private void AsServer(string program, params string[] words)
    {
        string line = $"{program} {string.Join(' ', words.Select(word => $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'"))} >'{_folder}/said' 2>&1";
        if (IsRoot)
        {
            Run("runuser", "-u", "postgres", "--", "bash", "-c", line);
        }
        else
        {
            Run("bash", "-c", line);
        }
    }
}
