using System.Runtime.InteropServices;

namespace FieldSession.Terminal;

/// <summary>
/// How a console of Windows was before the screens: its modes and code pages, to be put back. Terminal.Gui 2.5.0 leaves the code page of
/// the output at UTF-8, and every later program of that window would write into it. A console that knows no codes has no second screen
/// either: its last picture is wiped.
/// </summary>
internal sealed partial class ConsoleSettings : IDisposable
{
    // GetStdHandle and SetConsoleMode, Microsoft Learn
    private const int StandardInput = -10;
    private const int StandardOutput = -11;
    private const uint TakesCodes = 4;

    // colours as they are by default (ECMA-48, 8.3.117)
    private const string CodeOfNoEffect = "\x1b[m";

    private readonly uint _inputMode;
    private readonly uint _outputMode;
    private readonly uint _inputCodePage = GetConsoleCP();
    private readonly uint _outputCodePage = GetConsoleOutputCP();
    private readonly ushort _colours;
    private readonly bool _wipes;

    private ConsoleSettings(bool wipes)
    {
        _wipes = wipes;
        _ = GetConsoleMode(GetStdHandle(StandardInput), out _inputMode);
        _ = GetConsoleMode(GetStdHandle(StandardOutput), out _outputMode);
        _ = GetConsoleScreenBufferInfo(GetStdHandle(StandardOutput), out ScreenBuffer now);
        _colours = now.Attributes;
    }

    /// <summary>The console's settings as they are now; null: this is no Windows.</summary>
    public static ConsoleSettings? Kept() => OperatingSystem.IsWindows() ? new ConsoleSettings(wipes: !KnowsCodes()) : null;

    /// <summary>
    /// Whether the console of Windows knows the codes by which screens are drawn, as those since Windows 10 do unless they are set to the
    /// old ways; elsewhere terminals know them. It is tried out, since some consoles say yes and then show the codes: one that means
    /// nothing must not move the cursor.
    /// </summary>
    public static bool KnowsCodes()
    {
        if (!OperatingSystem.IsWindows())
        {
            return true;
        }

        nint output = GetStdHandle(StandardOutput);
        if (GetConsoleMode(output, out uint before) == 0 || SetConsoleMode(output, before | TakesCodes) == 0)
        {
            return false;
        }

        bool stays = StaysUnder(output, CodeOfNoEffect);
        _ = SetConsoleMode(output, before);
        return stays;
    }

    /// <summary>Writes codes to a console of Windows that knows them; to any other, and to a file, nothing.</summary>
    public static void Write(ReadOnlySpan<byte> codes)
    {
        if (!Console.IsOutputRedirected && KnowsCodes())
        {
            using ConsoleSettings before = new(wipes: false);
            _ = SetConsoleMode(GetStdHandle(StandardOutput), before._outputMode | TakesCodes);
            using Stream output = Console.OpenStandardOutput();
            output.Write(codes);
        }
    }

    /// <summary>Puts them back.</summary>
    public void Dispose()
    {
        if (_wipes)
        {
            Wipe(GetStdHandle(StandardOutput));
        }

        _ = SetConsoleMode(GetStdHandle(StandardInput), _inputMode);
        _ = SetConsoleMode(GetStdHandle(StandardOutput), _outputMode);
        _ = SetConsoleCP(_inputCodePage);
        _ = SetConsoleOutputCP(_outputCodePage);
    }

    // what was shown instead is wiped again
    private static bool StaysUnder(nint output, string code)
    {
        if (GetConsoleScreenBufferInfo(output, out ScreenBuffer first) == 0)
        {
            return false;
        }

        _ = WriteConsole(output, code, code.Length, out _, 0);
        _ = GetConsoleScreenBufferInfo(output, out ScreenBuffer then);
        bool stays = first.Cursor == then.Cursor;
        if (!stays)
        {
            _ = SetConsoleCursorPosition(output, first.Cursor);
            string blanks = new(' ', code.Length);
            _ = WriteConsole(output, blanks, blanks.Length, out _, 0);
            _ = SetConsoleCursorPosition(output, first.Cursor);
        }

        return stays;
    }

    // what is shown, and not what was scrolled out above it
    private void Wipe(nint output)
    {
        if (GetConsoleScreenBufferInfo(output, out ScreenBuffer now) != 0)
        {
            int columns = now.Size & 0xFFFF;
            int first = now.Top << 16;
            uint cells = (uint)(columns * (now.Bottom - now.Top + 1));
            _ = FillConsoleOutputCharacter(output, ' ', cells, first, out _);
            _ = FillConsoleOutputAttribute(output, _colours, cells, first, out _);
            _ = SetConsoleTextAttribute(output, _colours);
            _ = SetConsoleCursorPosition(output, first);
        }
    }

    // CONSOLE_SCREEN_BUFFER_INFO, Microsoft Learn: pairs of 16 bits, the first of a pair in the lower half
    private readonly record struct ScreenBuffer(
        int Size,
        int Cursor,
        ushort Attributes,
        ushort Left,
        ushort Top,
        ushort Right,
        ushort Bottom,
        ushort MostColumns,
        ushort MostRows
    );

    [LibraryImport("kernel32")]
    private static partial int GetConsoleScreenBufferInfo(nint console, out ScreenBuffer buffer);

    [LibraryImport("kernel32")]
    private static partial int SetConsoleCursorPosition(nint console, int place);

    [LibraryImport("kernel32", EntryPoint = "FillConsoleOutputCharacterW")]
    private static partial int FillConsoleOutputCharacter(nint console, ushort letter, uint cells, int first, out uint filled);

    [LibraryImport("kernel32")]
    private static partial int FillConsoleOutputAttribute(nint console, ushort attributes, uint cells, int first, out uint filled);

    [LibraryImport("kernel32")]
    private static partial int SetConsoleTextAttribute(nint console, ushort attributes);

    [LibraryImport("kernel32", EntryPoint = "WriteConsoleW", StringMarshalling = StringMarshalling.Utf16)]
    private static partial int WriteConsole(nint console, string letters, int count, out int written, nint reserved);

    [LibraryImport("kernel32")]
    private static partial nint GetStdHandle(int which);

    [LibraryImport("kernel32")]
    private static partial int GetConsoleMode(nint console, out uint mode);

    [LibraryImport("kernel32")]
    private static partial int SetConsoleMode(nint console, uint mode);

    [LibraryImport("kernel32")]
    private static partial uint GetConsoleCP();

    [LibraryImport("kernel32")]
    private static partial uint GetConsoleOutputCP();

    [LibraryImport("kernel32")]
    private static partial int SetConsoleCP(uint codePage);

    [LibraryImport("kernel32")]
    private static partial int SetConsoleOutputCP(uint codePage);
}
