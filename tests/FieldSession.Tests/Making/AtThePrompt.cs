using FieldSession.Store.Journaling;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Making;

/// <summary>Commands typed in a folder of their own, as a script types them: what they answer, and what lies there afterwards.</summary>
internal sealed class AtThePrompt(int seed = 1, string laptop = "") : IDisposable
{
    public const string Passphrase = "four quiet words here";

    private readonly string _path = Directory.CreateTempSubdirectory("fieldsession-prompt").FullName;
    private readonly SeededLot _lot = new(seed);

    /// <summary>The clock of the commands; it goes on by a minute with every command.</summary>
    public StoppedClock Clock { get; } = new();

    /// <summary>How passphrases are stretched: at once, unless the real program or a kept key file is asked too.</summary>
    public KeyStretch Stretch { get; init; } = QuickStretch.Derive;

    /// <summary>What the last command put out, and then its messages.</summary>
    public string Said { get; private set; } = "";

    /// <summary>Everything that any command said.</summary>
    public string EverythingSaid { get; private set; } = "";

    public string Study => Here("day.study");

    public string Here(string name) => Path.Combine(_path, name);

    /// <summary>Writes a file of the custodian or the crew.</summary>
    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Here(name))!);
        File.WriteAllText(Here(name), text);
        return Here(name);
    }

    /// <summary>Runs a command that must end with a code.</summary>
    public string Must(int code, string[] words, string typed = "", string? passphrase = Passphrase)
    {
        int ended = Run(words, typed, passphrase);
        Assert.True(code == ended, $"'{string.Join(' ', words)}' ended with {ended}, not {code}:\n{Said}");
        return Said;
    }

    /// <summary>Runs a command.</summary>
    public int Run(string[] words, string typed = "", string? passphrase = Passphrase)
    {
        StringWriter output = new();
        StringWriter error = new();
        Clock.Advance(TimeSpan.FromMinutes(1));
        int code = CommandLine.Run(words, Outside(typed) with { Output = output, Error = error, Passphrase = passphrase });
        Said = $"{output}{error}";
        EverythingSaid += Said;
        return code;
    }

    /// <summary>The world of a command that nobody listens to.</summary>
    public Surroundings Outside(string typed = "") =>
        new()
        {
            Input = new StringReader(typed),
            Output = TextWriter.Null,
            Error = TextWriter.Null,
            Clock = Clock,
            Lot = _lot,
            Stretch = Stretch,
            Laptop = laptop,
            ClipsFolder = Here("clips"),
        };

    /// <summary>The study as it is on the disk.</summary>
    public FieldSession.State.Study Now() => Logbook.Fold(JournalCheck.Of(Study).LinesToFirstFailing);

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
