using System.Diagnostics;

namespace FieldSession.Benchmarks;

/// <summary>The published native program, run as from a shell.</summary>
/// <param name="path">Where it is.</param>
internal sealed class NativeProgram(string path)
{
    /// <summary>Where it is.</summary>
    public string Path => path;

    /// <summary>Publishes it from this source.</summary>
    public static NativeProgram Published()
    {
        string system =
            OperatingSystem.IsWindows() ? "win-x64"
            : OperatingSystem.IsMacOS() ? "osx-arm64"
            : "linux-x64";
        string folder = System.IO.Path.GetFullPath(
            System.IO.Path.Combine(".artifacts", "publish", "FieldSession.Terminal", $"release_{system}")
        );
        Ended(
            Process.Start(
                new ProcessStartInfo("dotnet", ["publish", System.IO.Path.Combine("src", "FieldSession.Terminal"), "-r", system])
                {
                    RedirectStandardOutput = true,
                }
            )!
        );
        return new NativeProgram(System.IO.Path.Combine(folder, OperatingSystem.IsWindows() ? "fieldsession.exe" : "fieldsession"));
    }

    /// <summary>Runs it to its end, with nothing to read; it must end with 0.</summary>
    /// <returns>The highest memory it was seen to hold, MB.</returns>
    public double Run(params string[] words)
    {
        ProcessStartInfo start = new(path, words)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["FIELDSESSION_PASSPHRASE"] = "four quiet words here";
        using Process running = Process.Start(start)!;
        running.StandardInput.Close();
        running.OutputDataReceived += (_, _) => { };
        running.ErrorDataReceived += (_, _) => { };
        running.BeginOutputReadLine();
        running.BeginErrorReadLine();
        return Ended(running);
    }

    private static double Ended(Process running)
    {
        double highest = 0;
        do
        {
            running.Refresh();
            highest = running.HasExited ? highest : Math.Max(highest, PeakOf(running));
        } while (!running.WaitForExit(2));

        return running.ExitCode == 0
            ? highest
            : throw new InvalidOperationException(
                $"{running.StartInfo.FileName} {string.Join(' ', running.StartInfo.ArgumentList)} ended with {running.ExitCode}"
            );
    }

    private static double PeakOf(Process running)
    {
        try
        {
            return running.PeakWorkingSet64 / 1e6;
        }
        catch (InvalidOperationException)
        {
            // it has gone between the two questions
            return 0;
        }
    }
}
