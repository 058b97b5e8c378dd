using System.Security.Cryptography;
using System.Text;
using FieldSession.Measures;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>What a command may use of the world outside: the three streams, the clock, chance, and the passphrase.</summary>
internal sealed record Surroundings
{
    /// <summary>Lines typed or piped in.</summary>
    public required TextReader Input { get; init; }

    /// <summary>Bytes piped in, for what is no text: sound, levels. Opened once at most.</summary>
    public Func<Stream> InputBytes { get; init; } = () => Stream.Null;

    /// <summary>Where what was asked for goes.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Where messages go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Where the time comes from.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Where chance comes from.</summary>
    public required ILot Lot { get; init; }

    /// <summary>The passphrase given by the environment; null: it is asked for.</summary>
    public string? Passphrase { get; init; }

    /// <summary>The second passphrase of a key that two people hold, given by the environment; null: it is asked for.</summary>
    public string? SecondPassphrase { get; init; }

    /// <summary>The file that standard output is redirected into; empty: a file, and the system does not say which; null: no file.</summary>
    public string? OutputFile { get; init; }

    /// <summary>Waits for a key without showing it; null: the input is no keyboard.</summary>
    public Func<ConsoleKeyInfo>? ReadKeyUnseen { get; init; }

    /// <summary>Wipes what is on the terminal, also what has scrolled away, where the terminal can.</summary>
    public Action WipeScreen { get; init; } = () => { };

    /// <summary>Whether a person sits at a terminal that can show the screens.</summary>
    public bool HasTerminal { get; init; }

    /// <summary>The folder that remembers which studies were opened last; null: nothing is remembered.</summary>
    public string? StateFolder { get; init; }

    /// <summary>The folder with the user's own keys and habits; null: all is as delivered.</summary>
    public string? ConfigFolder { get; init; }

    /// <summary>The folder in which a clip of a recording lies while it is played; it is made and removed with all that is in it.</summary>
    public string ClipsFolder { get; init; } = Path.Combine(Path.GetTempPath(), "fieldsession-clips");

    /// <summary>
    /// What tells this laptop from others, such as the system's own number for it. With the path of a study it names the strand that is
    /// written here: a copy of the study in another place, or on another laptop, goes on in a strand of its own.
    /// </summary>
    public string Laptop { get; init; } = "";

    /// <summary>The strand that this laptop writes into a study that lies at a path, 16 hex digits.</summary>
    public string StrandAt(string path) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{Laptop}\n{Path.GetFullPath(path)}")).AsSpan(0, 8));

    /// <summary>The world of the running process.</summary>
    public static Surroundings OfThisProcess() => new()
    {
        Input = Console.IsInputRedirected ? StandardStreams.Input() : new KeyboardLines(StandardStreams.Input()),
        InputBytes = Console.OpenStandardInput,
        Output = new PlainOutput(StandardStreams.Output(), full => new OutputRefusedException(full)),
        // a fault of the message stream can be told nowhere
        Error = new PlainOutput(StandardStreams.Error(), refused: null),
        Clock = TimeProvider.System,
        Lot = new SystemLot(),
        ReadKeyUnseen = Console.IsInputRedirected ? null : () => Console.ReadKey(intercept: true),
        WipeScreen = TerminalSettings.WriteWipingOfAllCodes,
        Passphrase = Environment.GetEnvironmentVariable("FIELDSESSION_PASSPHRASE"),
        SecondPassphrase = Environment.GetEnvironmentVariable("FIELDSESSION_PASSPHRASE_2"),
        OutputFile = RedirectedOutput.File(),
        StateFolder = RecentFile.StandardFolder(),
        ConfigFolder = UsersOwn.StandardFolder(),
        ClipsFolder = Path.Combine(RecentFile.StandardFolder() ?? Path.GetTempPath(), "fieldsession-clips"),
        Laptop = NameOfLaptop(),
        HasTerminal = !Console.IsOutputRedirected && !Console.IsInputRedirected,
    };

    // the name of a laptop may change with the network; systemd's number of it does not
    private static string NameOfLaptop()
    {
        const string NumberFile = "/etc/machine-id";
        try
        {
            string number = File.Exists(NumberFile) ? File.ReadAllText(NumberFile).Trim() : "";
            return number.Length > 0 ? number : Environment.MachineName;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return Environment.MachineName;
        }
    }

    /// <summary>Asks on the message stream and takes the answer from the input; null: the input has ended.</summary>
    public string? Ask(string question)
    {
        Error.Write(question);
        Error.Flush();
        return Input.ReadLine();
    }

    /// <summary>Asks for a secret: what is typed at a keyboard is not shown. Null: the input has ended.</summary>
    public string? AskSecret(string question)
    {
        if (ReadKeyUnseen is null)
        {
            return Ask(question);
        }

        Error.Write(question);
        Error.Flush();
        return HiddenLine.Read(ReadKeyUnseen, Error);
    }
}
