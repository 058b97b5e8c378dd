using System.Diagnostics;

namespace FieldSession.Terminal.Commands;

/// <summary>A program of the user's, started by a command line as the system's own shell takes it. It gets none of our streams.</summary>
internal static class UsersProgram
{
    /// <summary>Starts it with its input closed; null: it can't be started.</summary>
    /// <param name="command">The command line.</param>
    /// <param name="file">A file whose path is put behind it; null: none.</param>
    public static Process? Start(string command, string? file = null)
    {
        ProcessStartInfo start = new(OperatingSystem.IsWindows() ? "cmd.exe" : "/bin/sh")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        if (OperatingSystem.IsWindows() && file is not null)
        {
            start.Arguments = $"/c \"{command} \"{file}\"\"";
        }
        else
        {
            string[] words = file is null ? [command] : [$"{command} \"$1\"", "sh", file];
            Array.ForEach([OperatingSystem.IsWindows() ? "/c" : "-c", .. words], start.ArgumentList.Add);
        }

        try
        {
            Process? program = Process.Start(start);
            program?.StandardInput.Close();
            program?.BeginErrorReadLine();
            return program;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    /// <summary>Ends it and what it started; nothing happens where it has ended, or was never started.</summary>
    public static void End(Process? program)
    {
        try
        {
            program?.Kill(entireProcessTree: true);
        }
        catch (Exception gone) when (gone is InvalidOperationException or System.ComponentModel.Win32Exception or NotSupportedException)
        {
            // it has ended by itself
        }
    }
}
