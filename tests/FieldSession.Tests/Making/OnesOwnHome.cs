using System.Diagnostics;
using System.Text;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Making;

/// <summary>
/// The real program as one person runs it, in a home folder of their own that holds everything it may write to: studies, exports,
/// temporary files, settings. What was given to it and what it said is kept.
/// </summary>
internal sealed class OnesOwnHome : IDisposable
{
    private readonly Folder _folder = new();
    private readonly StringBuilder _said = new();
    private readonly StringBuilder _given = new();

    public OnesOwnHome() => Directory.CreateDirectory(_folder["tmp"]);

    public string Path => _folder.Path;

    /// <summary>Everything that the program said.</summary>
    public string Said => _said.ToString();

    /// <summary>Every command line, every typed line and every environment variable that it was given.</summary>
    public string Given => _given.ToString();

    public string Here(string name) => _folder[name];

    public void Write(string name, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Here(name))!);
        File.WriteAllText(Here(name), text);
    }

    /// <summary>Brings a file out of somebody else's hands.</summary>
    public void Receive(OnesOwnHome from, string name) => File.Copy(from.Here(name), Here(name));

    /// <summary>Runs a command that must end with a code.</summary>
    /// <param name="code">The code.</param>
    /// <param name="words">The command's words.</param>
    /// <param name="typed">What goes in on standard input.</param>
    /// <param name="passphrase">In the environment; null: not set.</param>
    public string Run(int code, string[] words, string typed = "", string? passphrase = null)
    {
        ProcessStartInfo start = Started(words, passphrase);
        _given.AppendLine(string.Join(' ', words)).AppendLine(typed);
        foreach ((string name, string? value) in start.Environment)
        {
            _given.AppendLine($"{name}={value}");
        }

        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(typed);
        process.StandardInput.Close();
        string said = process.StandardOutput.ReadToEnd() + error.Result;
        process.WaitForExit();
        _said.Append(said);
        Assert.True(process.ExitCode == code, $"'{string.Join(' ', words)}' ended with {process.ExitCode}, not {code}:\n{said}");
        return said;
    }

    public void Dispose() => _folder.Dispose();

    private ProcessStartInfo Started(string[] words, string? passphrase)
    {
        ProcessStartInfo start = new("dotnet", [typeof(CommandLine).Assembly.Location, .. words])
        {
            WorkingDirectory = Path,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (string place in new[] { "TMPDIR", "TMP", "TEMP", "HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME" })
        {
            start.Environment[place] = Here("tmp");
        }

        start.Environment["FIELDSESSION_PASSPHRASE"] = passphrase;
        return start;
    }
}
