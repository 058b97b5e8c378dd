using Microsoft.Win32.SafeHandles;

namespace FieldSession.Terminal.Commands;

/// <summary>Where standard output leads, so that secrets are not written beside a study.</summary>
internal static class RedirectedOutput
{
    private const int StandardOutput = 1;
    private const string NameOnLinux = "/proc/self/fd/1";

    /// <summary>The file that standard output goes into; empty: a file, and the system does not say which; null: a terminal or a pipe.</summary>
    public static string? File()
    {
        if (!Console.IsOutputRedirected || !IsFile())
        {
            return null;
        }

        return OperatingSystem.IsLinux() ? new FileInfo(NameOnLinux).LinkTarget ?? "" : "";
    }

    private static bool IsFile()
    {
        try
        {
            using SafeFileHandle handle = new(StandardOutput, ownsHandle: false);
            using FileStream output = new(handle, FileAccess.Write, bufferSize: 0);
            return output.CanSeek;
        }
        catch (Exception unknown) when (unknown is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return false;
        }
    }
}
