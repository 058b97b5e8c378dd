using System.Text;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The three streams of the process. On Windows .NET takes the console's old code page for them: an umlaut that is piped in would be
/// another letter, and a sign that the page lacks a question mark. So files and pipes are UTF-8 with plain line feeds, as on every system,
/// and a console is given the letters themselves.
/// </summary>
internal static class StandardStreams
{
    /// <summary>What is typed or piped in.</summary>
    public static TextReader Input()
    {
        if (!OperatingSystem.IsWindows())
        {
            return Console.In;
        }

        if (Console.IsInputRedirected)
        {
            return new StreamReader(Console.OpenStandardInput(), Utf8);
        }

        // asked by this name .NET reads letters, and leaves the console's code page alone
        Console.InputEncoding = Encoding.Unicode;
        return Console.In;
    }

    /// <summary>Where what was asked for goes.</summary>
    public static TextWriter Output() => Writer(Console.IsOutputRedirected, Console.OpenStandardOutput, () => Console.Out);

    /// <summary>Where messages go.</summary>
    public static TextWriter Error() => Writer(Console.IsErrorRedirected, Console.OpenStandardError, () => Console.Error);

    private static UTF8Encoding Utf8 => new(encoderShouldEmitUTF8Identifier: false);

    private static TextWriter Writer(bool isRedirected, Func<Stream> open, Func<TextWriter> console)
    {
        if (!OperatingSystem.IsWindows())
        {
            return console();
        }

        if (isRedirected)
        {
            return new StreamWriter(open(), Utf8) { AutoFlush = true, NewLine = "\n" };
        }

        Console.OutputEncoding = Encoding.Unicode;
        return console();
    }
}

/// <summary>Where standard output leads, so that secrets are not written beside a study.</summary>
internal static class RedirectedOutput
{
    private const int StandardOutput = 1;
    private const string NameOnLinux = "/proc/self/fd/1";

    /// <summary>
    /// The file that standard output goes into; empty: a file, and the system does not say which; null: a terminal or a pipe.
    /// </summary>
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

/// <summary>Reads a line that nobody is to see: nothing of it is shown while it is typed.</summary>
internal static class HiddenLine
{
    /// <summary>The line; null: the input has ended.</summary>
    /// <param name="readKey">Waits for the next key without showing it.</param>
    /// <param name="messages">Where the line ends visibly.</param>
    public static string? Read(Func<ConsoleKeyInfo> readKey, TextWriter messages)
    {
        List<char> typed = [];
        while (true)
        {
            ConsoleKeyInfo key = readKey();
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    messages.WriteLine();
                    return string.Concat(typed);
                case ConsoleKey.Backspace when typed.Count > 0:
                    typed.RemoveAt(typed.Count - 1);
                    break;
                case ConsoleKey.D when key.Modifiers == ConsoleModifiers.Control:
                    return null;
                default:
                    if (!char.IsControl(key.KeyChar))
                    {
                        typed.Add(key.KeyChar);
                    }

                    break;
            }
        }
    }
}
