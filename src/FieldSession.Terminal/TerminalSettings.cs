using System.Runtime.InteropServices;

namespace FieldSession.Terminal;

/// <summary>The settings of the terminal on standard input, as the shell left them, to be put back.</summary>
internal sealed partial class TerminalSettings
{
    // Mouse, bracketed paste and extended keys off, colours reset, main screen, cursor on.
    private static ReadOnlySpan<byte> RestoringCodes => "\x1b[?1003l\x1b[?1015l\x1b[?1006l\x1b[?2004l\x1b[<u\x1b[0m\x1b[?1049l\x1b[?25h"u8;

    // Larger than any struct termios.
    private readonly byte[] _termios = new byte[256];

    private TerminalSettings()
    {
    }

    /// <summary>The settings; null: standard input is no terminal, or it is gone.</summary>
    public static TerminalSettings? OfStandardInput()
    {
        TerminalSettings settings = new();
        return !OperatingSystem.IsWindows() && ReadSettings(0, settings._termios) == 0 ? settings : null;
    }

    /// <summary>Writes what brings the terminal's own screen back. A terminal that is gone is passed over.</summary>
    public static void WriteRestoringCodes()
    {
        try
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write(RestoringCodes);
            output.Flush();
        }
        catch (IOException)
        {
            // Nobody is there to see it.
        }
    }

    /// <summary>Puts the settings back.</summary>
    public void Restore() => _ = WriteSettings(0, 0, _termios);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int ReadSettings(int file, [Out] byte[] settings);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int WriteSettings(int file, int when, byte[] settings);
}
