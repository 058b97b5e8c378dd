using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Terminal;

/// <summary>
/// The settings of the terminal that this process is controlled by, as the shell left them, to be put back. It is reached by
/// its own name, because standard input and output may lead elsewhere while the screens are drawn all the same.
/// </summary>
internal sealed partial class TerminalSettings
{
    private const string Name = "/dev/tty";

    // Mouse, bracketed paste and extended keys off, colours reset, main screen, cursor on, cursor keys and keypad as they were.
    private static ReadOnlySpan<byte> RestoringCodes =>
        "\x1b[?1003l\x1b[?1015l\x1b[?1006l\x1b[?2004l\x1b[<u\x1b[0m\x1b[?1049l\x1b[?25h\x1b[?1l\x1b>"u8;

    // Lines that have scrolled away (ECMA-48 names no such code; terminals agree on it).
    private static ReadOnlySpan<byte> WipingCodes => "\x1b[3J"u8;

    // Cursor to the first place, the screen erased (ECMA-48, 8.3.21 and 8.3.39), then what has scrolled away.
    private static ReadOnlySpan<byte> WipingOfAllCodes => "\x1b[H\x1b[2J\x1b[3J"u8;

    private static ReadOnlySpan<byte> KeypadCodes => "\x1b[?1l\x1b>"u8;

    // Larger than any struct termios.
    private readonly byte[] _termios = new byte[256];

    private TerminalSettings() { }

    /// <summary>The settings; null: there is no terminal, or it is gone.</summary>
    public static TerminalSettings? OfTerminal()
    {
        using SafeFileHandle? terminal = Open();
        TerminalSettings settings = new();
        return terminal is not null && ReadSettings(terminal, settings._termios) == 0 ? settings : null;
    }

    /// <summary>Writes what brings the terminal's own screen back. A terminal that is gone is passed over.</summary>
    public static void WriteRestoringCodes() => Write(RestoringCodes);

    /// <summary>Writes what takes back the keypad and cursor keys that .NET switches over and leaves so.</summary>
    public static void WriteKeypadCodes() => Write(KeypadCodes);

    /// <summary>Writes what wipes the lines that have scrolled away, where the terminal can.</summary>
    public static void WriteWipingCodes() => Write(WipingCodes);

    /// <summary>Writes what wipes the screen and the lines that have scrolled away, where the terminal can.</summary>
    public static void WriteWipingOfAllCodes()
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
        {
            // a console that knows no codes is wiped by the runtime, with all that has scrolled away
            Console.Clear();
        }

        Write(WipingOfAllCodes);
    }

    /// <summary>Puts the settings back.</summary>
    public void Restore()
    {
        using SafeFileHandle? terminal = Open();
        _ = terminal is null ? 0 : WriteSettings(terminal, 0, _termios);
    }

    private static void Write(ReadOnlySpan<byte> codes)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                ConsoleSettings.Write(codes);
                return;
            }

            using SafeFileHandle? terminal = Open();
            if (terminal is not null)
            {
                using FileStream output = new(terminal, FileAccess.Write, bufferSize: 0);
                output.Write(codes);
            }
        }
        catch (IOException)
        {
            // Nobody is there to see it.
        }
    }

    private static SafeFileHandle? Open()
    {
        if (OperatingSystem.IsWindows())
        {
            return null;
        }

        try
        {
            return File.OpenHandle(Name, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int ReadSettings(SafeFileHandle file, [Out] byte[] settings);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int WriteSettings(SafeFileHandle file, int when, byte[] settings);
}
