using System.Diagnostics;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Faults;

/// <summary>One run of the real program to its end.</summary>
/// <param name="Code">Its exit code; 128 and more: a signal ended it; null: it did not end.</param>
/// <param name="Answers">What it put out, a line each, whole lines only.</param>
/// <param name="Messages">What it said on the message stream.</param>
internal sealed record ProgramRun(int? Code, string[] Answers, string Messages)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    /// <summary>Everything it said.</summary>
    public string Said => $"{string.Join('\n', Answers)}\n{Messages}";

    /// <summary>Runs it in a folder.</summary>
    /// <param name="folder">The folder it is called in.</param>
    /// <param name="words">Its words.</param>
    /// <param name="typed">What it can read.</param>
    /// <param name="below">The words of a program that runs it; empty: it is run by itself.</param>
    public static ProgramRun In(string folder, string[] words, string typed = "", params string[] below)
    {
        string[] all = [.. below, RunningProgram.PathOfProgram, .. words];
        ProcessStartInfo start = new(all[0], all[1..])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_ROOT"] = RunningProgram.RuntimeFolder;
        start.Environment["FIELDSESSION_PASSPHRASE"] = AtThePrompt.Passphrase;
        start.Environment["XDG_STATE_HOME"] = start.Environment["XDG_CONFIG_HOME"] = Path.Combine(folder, "state");
        using Process running = Process.Start(start)!;
        Task<string> output = running.StandardOutput.ReadToEndAsync();
        Task<string> messages = running.StandardError.ReadToEndAsync();
        Type(running, typed);
        bool hasEnded = running.WaitForExit(Patience);
        if (!hasEnded)
        {
            running.Kill(entireProcessTree: true);
        }

        running.WaitForExit();
        string[] lines = output.Result.Split('\n');
        return new ProgramRun(hasEnded ? running.ExitCode : null, lines[..^1], messages.Result);
    }

    private static void Type(Process running, string typed)
    {
        try
        {
            running.StandardInput.Write(typed);
            running.StandardInput.Close();
        }
        catch (IOException)
        {
            // it went before it had read everything
        }
    }
}
