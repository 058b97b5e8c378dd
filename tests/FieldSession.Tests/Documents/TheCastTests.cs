using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;
using FieldSession.Tests.Ptys;

namespace FieldSession.Tests.Documents;

/// <summary>
/// Twenty seconds of the real program in a terminal, kept as an asciicast (version 2, an open text format). Where the program now draws
/// something else, the test says so; 'FIELDSESSION_APPROVE=1 dotnet test --filter TheCast' records again.
/// </summary>
[Collection(Pty.Collection)]
public sealed partial class TheCastTests : IDisposable
{
    private const string Cast = "docs/pictures/reading.cast";

    // What is typed, the words that show that it was done, and the second at which the recording shows it.
    private static readonly ImmutableArray<(string Keys, string Until, double At)> Steps =
    [
        ("", "run 9 of 9", 0),
        ("\r", "NEXT 1 of 11", 2.5),
        ("54", "> 54", 5.5),
        ("57", "> 5457", 6.5),
        ("\r", "NEXT 2 of 11", 7.5),
        ("6470", "> 6470", 10.5),
        ("t", "> 6470 t", 12),
        ("\r", "NEXT 3 of 11", 13.5),
        (";truck overtaking us", "overtaking us", 16.5),
        ("\r", "note on 2", 18),
    ];

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-cast").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [PtyFact]
    public void The_recording_shows_what_the_program_draws_now()
    {
        ImmutableArray<string> heard = Heard();
        string path = Path.Combine(Repository.Root, Cast);
        if (Environment.GetEnvironmentVariable(Golden.Variable) == "1")
        {
            File.WriteAllText(path, Recorded(heard));
        }

        string[] kept = [.. File.ReadLines(path).Skip(1).Select(line => JsonDocument.Parse(line).RootElement[2].GetString()!)];
        Assert.Equal(Steps.Length, kept.Length);
        Assert.Equal(Shown(heard), Shown([.. kept]));
    }

    private ImmutableArray<string> Heard()
    {
        using PtyTerminal terminal = new();
        terminal.Start([ProgramInATerminal.Path, "demo", "--out", _folder]);
        List<string> heard = [];
        foreach ((string keys, string until, _) in Steps)
        {
            terminal.Type(keys).Until(until).Settled();
            heard.Add(terminal.TakeHeard());
        }

        terminal.Type("\x11");
        Assert.Equal(0, terminal.Ended());
        return [.. heard];
    }

    private static string Recorded(ImmutableArray<string> heard)
    {
        IEnumerable<string> events = heard.Zip(
            Steps,
            (written, step) =>
                $"[{step.At.ToString("0.0", CultureInfo.InvariantCulture)}, \"o\", {JsonSerializer.Serialize(written, Plain)}]"
        );
        return "{\"version\": 2, \"width\": 80, \"height\": 24, \"title\": \"A reading, one that traffic spoilt, and a note on "
            + "it\", \"env\": {\"TERM\": \"xterm-256color\"}}\n"
            + string.Concat(events.Select(line => $"{line}\n"));
    }

    // The clock in the header is the time of the recording.
    private static string[] Shown(ImmutableArray<string> written)
    {
        PtyScreen screen = new(80, 24);
        return
        [
            .. written.Select(text =>
            {
                screen.Take(text);
                return Clock().Replace(screen.Text, "hh:mm");
            }),
        ];
    }

    [GeneratedRegex("[0-9]{2}:[0-9]{2}")]
    private static partial Regex Clock();
}
