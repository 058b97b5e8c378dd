using System.Text;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The three streams of the process. On Windows .NET takes the console's old code page for them: an umlaut that is piped in would be another letter, and a
/// sign that the page lacks a question mark. So files and pipes are UTF-8 with plain line feeds, as on every system, and a console is given the letters themselves.
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
