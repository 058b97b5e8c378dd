using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Archiving;

/// <summary>A test that needs PostgreSQL on this machine; where it is not, it is passed over and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FactWithPostgresAttribute : FactAttribute
{
    public FactWithPostgresAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line)
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
    private readonly bool _isOn;

    public APostgres()
    {
        if (IsRoot)
        {
            // PostgreSQL does not start as root
            Run("chmod", "755", _folder);
            Run("chown", "postgres", _folder);
        }

        try
        {
            AsServer("initdb", "-D", $"{_folder}/db", "-U", "postgres", "--auth=trust", "--no-sync");
            AsServer("pg_ctl", "-D", $"{_folder}/db", "-o", $"-c listen_addresses='' -k {_folder}", "-w", "-l", $"{_folder}/log", "start");
            _isOn = true;
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    private static bool IsRoot => Environment.UserName == "root";

    /// <summary>Where a program lies; null: nowhere.</summary>
    public static string? Find(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(':')
            .Select(folder => Path.Combine(folder, program))
            .FirstOrDefault(File.Exists);

    /// <summary>The lines that a query answers.</summary>
    public string Ask(string query) => Run("psql", "-X", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-c", query).Trim();

    /// <summary>Runs a program beside the server, and gives what it put out.</summary>
    public string Run(string program, params string[] words)
    {
        (int code, string said) = Try(program, words);
        Assert.True(code == 0, $"{program} {string.Join(' ', words)} ended with {code}: {said}");
        return said;
    }

    /// <summary>Runs a program beside the server, and gives how it ended and what it put out; where it failed, its messages too.</summary>
    public (int Code, string Said) Try(string program, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, RedirectStandardError = true };
        (start.Environment["PGHOST"], start.Environment["PGUSER"], start.Environment["PGDATABASE"]) = (_folder, "postgres", "postgres");
        using Process process = Process.Start(start)!;
        Task<string> faults = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, process.ExitCode == 0 ? output : $"{faults.Result}{output}");
    }

    public void Dispose()
    {
        if (_isOn)
        {
            AsServer("pg_ctl", "-D", $"{_folder}/db", "-m", "immediate", "-w", "stop");
        }

        Directory.Delete(_folder, recursive: true);
    }

    // a started server keeps the streams of whoever started it, so what it says goes into files
    private void AsServer(string program, params string[] words)
    {
        string line =
            $"{program} {string.Join(' ', words.Select(word => $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'"))} "
            + $">'{_folder}/said' 2>&1";
        (int code, string said) = IsRoot ? Try("runuser", "-u", "postgres", "--", "bash", "-c", line) : Try("bash", "-c", line);
        Assert.True(code == 0, $"'{line}' ended with {code}: {said}{Told("said")}{Told("log")}");
    }

    private string Told(string name) =>
        Path.Combine(_folder, name) is { } file && File.Exists(file) ? $"\n{name}: {File.ReadAllText(file)}" : "";
}
