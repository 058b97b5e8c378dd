using System.Text.RegularExpressions;
using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Demonstration;
using FieldSession.Terminal.Look;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>Somebody who types what a page says, word by word, in a new folder, and sees what the program answers.</summary>
internal sealed partial class AStranger : IDisposable
{
    private static readonly string[] Named =
    [
        "Enter",
        "Esc",
        "Tab",
        "Up",
        "Down",
        "Left",
        "Right",
        "PgUp",
        "PgDn",
        "Home",
        "End",
        "Ctrl+Q",
    ];

    private readonly AtThePrompt _prompt = new(11);
    private OpenedStudy? _opened;
    private Tui? _tui;
    private FittingTui? _list;
    private DemoFolder? _demo;

    /// <summary>What the last command said, paths as they were typed.</summary>
    public string Said { get; private set; } = "";

    /// <summary>What is on the screen.</summary>
    public string Screen => Front!.Screen;

    private HeadlessTerminal? Front => _list is null ? _tui : _list;

    /// <summary>Writes a file as the page shows it.</summary>
    public void Writes(string file, IEnumerable<string> lines) => _prompt.Write(file, string.Join('\n', lines) + "\n");

    /// <summary>Types a line at the prompt; it must be done.</summary>
    public void Types(string line)
    {
        string[] words = [.. Word().Matches(line).Select(match => match.Value.Trim('\''))];
        Assert.Equal("fieldsession", words[0]);
        Said = "";
        switch (words[1..])
        {
            case ["demo", "--out", string folder]:
                OpensTheDemo(folder);
                break;
            case ["fitting", string key]:
                _list = new FittingTui(_prompt.Outside().KeyFile.Open(_prompt.Here(key), DemoStudy.All[0].Passphrase).Key!);
                break;
            case ["drive", string study]:
                Opens(study);
                break;
            default:
                Said = Bare(_prompt.Must(ExitCode.Done, [.. words[1..].Select(Lying)], passphrase: DemoStudy.All[0].Passphrase));
                break;
        }
    }

    /// <summary>Presses a line of keys: what is typed, and a named key at its end.</summary>
    public void Presses(string line)
    {
        int cut = line.LastIndexOf(' ') + 1;
        bool isNamed = Named.Contains(line[cut..]) || FunctionKey().IsMatch(line[cut..]);
        string typed = isNamed ? line[..Math.Max(0, cut - 1)] : line;
        string key = line[cut..]
            .Replace("PgDn", "PageDown")
            .Replace("PgUp", "PageUp")
            .Replace("Left", "CursorLeft")
            .Replace("Right", "CursorRight");
        string named = isNamed ? $"<{key}>" : "";
        Front!.Press(typed + named);
        if (Front.HasEnded)
        {
            Leaves();
        }
    }

    public void Dispose()
    {
        Leaves();
        _prompt.Dispose();
    }

    private void OpensTheDemo(string folder)
    {
        _demo = DemoFolder.At(DemoStudy.All[0], _prompt.Here(folder), _prompt.Outside());
        DemoClock clock = new();
        Assert.Equal(ExitCode.Done, DemoCommand.Lay(_demo, clock, _prompt.Outside()));
        _prompt.Clock.Now = clock.GetUtcNow();
        Opens($"{folder}/{_demo.Demo.Name}.study");
    }

    private void Opens(string study)
    {
        Surroundings outside = _prompt.Outside();
        string folder = Path.GetDirectoryName(study)!;
        _opened = OpenedStudy.At(_prompt.Here(study), outside);
        _tui = new Tui(
            _opened.Logbook,
            _prompt.Clock,
            _ =>
                DriveCommand.DeskOf(_opened, outside, _prompt.Here(folder)) with
                {
                    Palette = Palette.For("1"),
                    KeyOfDemo = _demo is null ? null : Bare(_demo.OpensKey),
                    OpenKey = (path, passphrase, ring) =>
                        DriveCommand.Tried(Lying(path), passphrase, _opened.Logbook.Study, ring, outside.KeyFile),
                    WriteReport = () => Bare(ReportCommand.Write(_opened.Logbook, _prompt.Here(folder))),
                }
        );
    }

    private void Leaves()
    {
        Said = _tui is not null && _demo is not null ? Bare(_demo.Farewell) : "";
        _list?.Dispose();
        _list = null;
        _tui?.Dispose();
        _opened?.Dispose();
        (_tui, _opened, _demo) = (null, null, null);
    }

    private string Lying(string word) => word.StartsWith("first-day", StringComparison.Ordinal) ? _prompt.Here(word) : word;

    // Hashes and strands are others on every machine and in every folder.
    private string Bare(string said) =>
        Hash().Replace(said.Replace($"{_prompt.Here("")}{Path.DirectorySeparatorChar}", "", StringComparison.Ordinal), "…").TrimEnd();

    [GeneratedRegex("'[^']*'|[^ ]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\b[0-9a-f]{16,64}\b")]
    private static partial Regex Hash();

    [GeneratedRegex("^F[1-9]$")]
    private static partial Regex FunctionKey();
}
