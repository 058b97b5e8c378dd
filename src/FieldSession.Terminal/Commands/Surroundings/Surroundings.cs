using System.Security.Cryptography;
using System.Text;
using FieldSession.Measures;
using FieldSession.Store;
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

    /// <summary>How a passphrase becomes the key of a key file: slowly, so that guessing is slow.</summary>
    public KeyStretch Stretch { get; init; } = Pbkdf2Stretch.Derive;

    /// <summary>Seals key files and opens them.</summary>
    public KeyFile KeyFile => new(Lot, Stretch);

    /// <summary>The passphrase given by the environment; null: it is asked for.</summary>
    public string? Passphrase { get; init; }

    /// <summary>The second passphrase of a key that two people hold, given by the environment; null: it is asked for.</summary>
    public string? SecondPassphrase { get; init; }

    /// <summary>
    /// The file that standard output is redirected into; empty: a file, and the system does not say which; null: no file.
    /// </summary>
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
    public static Surroundings OfThisProcess() =>
        new()
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

/// <summary>
/// What a user has made their own: keys and habits, each in a file of its name that is read before any screen is made. Where there is
/// none, all is as delivered.
/// </summary>
/// <param name="Keys">The keys.</param>
/// <param name="Habits">How numbers and times are read.</param>
internal sealed record UsersOwn(KeyTable Keys, Habits Habits)
{
    /// <summary>Opens screens with what the user has made their own.</summary>
    /// <param name="outside">The world outside.</param>
    /// <param name="show">Opens them.</param>
    /// <returns>An exit code; <see cref="ExitCode.Wrong"/>: a file is wrong, and what is wrong has been said with file and line.</returns>
    public static int Show(Surroundings outside, Func<UsersOwn, int> show) =>
        Read(outside) is { } own ? own.Habits.Follow(() => show(own)) : ExitCode.Wrong;

    /// <summary>What is the user's own; null: a file is wrong, and what is wrong has been said with file and line.</summary>
    public static UsersOwn? Read(Surroundings outside) =>
        Read(outside, "keys", KeyTable.Standard, lines => OwnKeys.Of(KeyTable.Standard, lines)) is { } keys
        && Read(outside, "habits", new Habits(), Habits.Of) is { } habits
            ? new UsersOwn(keys, habits)
            : null;

    /// <summary>
    /// The folder in which a program of this user keeps its settings: XDG_CONFIG_HOME, else .config below the home folder.
    /// </summary>
    public static string? StandardFolder() => UserFolders.Of("XDG_CONFIG_HOME", ".config");

    private static T? Read<T>(Surroundings outside, string name, T delivered, Func<IReadOnlyList<string>, (T Told, string? Refusal)> told)
        where T : class
    {
        string? path = outside.ConfigFolder is { } folder ? Path.Combine(folder, name) : null;
        if (path is null || !File.Exists(path))
        {
            return delivered;
        }

        try
        {
            (T own, string? refusal) = told(SmallText.Lines(path));
            if (refusal is not null)
            {
                outside.Error.WriteLine($"fieldsession: {path}, {refusal}");
                return null;
            }

            return own;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine(CommandWords.OwnFileUnreadable(path, unreadable, name));
            return null;
        }
    }
}

/// <summary>Standard output takes no more: what was asked for is not printed whole.</summary>
internal sealed class OutputRefusedException(Exception cause) : IOException(CommandWords.OutputIsNotWhole(cause.Message), cause);
