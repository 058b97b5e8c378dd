using FieldSession.Measures;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>What a command may use of the world outside: the three streams, the clock, chance, and the passphrase.</summary>
internal sealed record Surroundings
{
    /// <summary>Lines typed or piped in.</summary>
    public required TextReader Input { get; init; }

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

    /// <summary>Waits for a key without showing it; null: the input is no keyboard.</summary>
    public Func<ConsoleKeyInfo>? ReadKeyUnseen { get; init; }

    /// <summary>Whether a person sits at a terminal that can show the screens.</summary>
    public bool HasTerminal { get; init; }

    /// <summary>The folder that remembers which studies were opened last; null: nothing is remembered.</summary>
    public string? StateFolder { get; init; }

    /// <summary>The folder with the user's own keys; null: the keys are as delivered.</summary>
    public string? ConfigFolder { get; init; }

    /// <summary>The world of the running process.</summary>
    public static Surroundings OfThisProcess() => new()
    {
        Input = Console.In,
        Output = Console.Out,
        Error = Console.Error,
        Clock = TimeProvider.System,
        Lot = new SystemLot(),
        ReadKeyUnseen = Console.IsInputRedirected ? null : () => Console.ReadKey(intercept: true),
        Passphrase = Environment.GetEnvironmentVariable("FIELDSESSION_PASSPHRASE"),
        StateFolder = RecentFile.StandardFolder(),
        ConfigFolder = KeysFile.StandardFolder(),
        HasTerminal = !Console.IsOutputRedirected && !Console.IsInputRedirected,
    };

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
