using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Demonstration;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Making;

/// <summary>The demo study laid in memory, its key file in a folder that vanishes; the same seed makes the same key each time.</summary>
internal sealed class ADemoDay : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-day").FullName;
    private readonly StringWriter _said = new();

    public ADemoDay()
    {
        Book = Logbook.Open(Journal, Clock, "00000000000000aa");
        Clock.Now = new DateTimeOffset(2026, 2, 3, 8, 0, 0, TimeSpan.Zero);
        Assert.Equal(ExitCode.Done, DemoDay.Lay(Demo, Book, KeyPath, Outside("")));
    }

    public static DemoStudy Demo => DemoStudy.All[0];

    public MemoryJournal Journal { get; } = new();

    public StoppedClock Clock { get; } = new();

    public Logbook Book { get; }

    public string KeyPath => Path.Combine(_folder, "quillmere.key");

    public string ReportPath => Path.Combine(_folder, "report.md");

    /// <summary>What commands said so far.</summary>
    public string Said => _said.ToString();

    /// <summary>Lines of a demo file, each with the time at which it is typed.</summary>
    public static IEnumerable<(DateTimeOffset At, string Line)> Lines(string file)
    {
        DemoClock clock = new();
        foreach (string line in DemoFiles.Lines(file))
        {
            clock.Follow(line);
            if (!EntryText.IsPassedOver(line))
            {
                clock.Advance(TimeSpan.FromMinutes(1));
                yield return (clock.GetUtcNow(), line);
            }
        }
    }

    /// <summary>Types lines as they are; all must be taken.</summary>
    public ADemoDay Typed(string file)
    {
        foreach ((DateTimeOffset at, string line) in Lines(file))
        {
            TypedAt(at, line);
        }

        return this;
    }

    /// <summary>Types the day up to the stop before its last run.</summary>
    public ADemoDay TypedToTheLastRun()
    {
        (DateTimeOffset At, string Line)[] lines = [.. Lines("quillmere/day.txt")];
        foreach (
            (DateTimeOffset at, string line) in lines.Take(
                Array.FindLastIndex(lines, one => one.Line.StartsWith("run ", StringComparison.Ordinal))
            )
        )
        {
            TypedAt(at, line);
        }

        return this;
    }

    private void TypedAt(DateTimeOffset at, string line)
    {
        Clock.Now = at;
        Assert.Equal(ExitCode.Done, EnterCommand.Run(Book, Outside(line)));
    }

    /// <summary>The whole world of a command, with lines to read.</summary>
    public Surroundings Outside(string typed) =>
        new()
        {
            Input = new StringReader(typed),
            Output = _said,
            Error = _said,
            Clock = Clock,
            Lot = new SeededLot(11),
            Stretch = QuickStretch.Derive,
            Passphrase = Demo.Passphrase,
        };

    /// <summary>The screens on this day, with its key file and a report beside it; a path is taken from their folder.</summary>
    public Tui Screens(int columns = 80, int rows = 24, string screen = "drive") =>
        new(
            Book,
            Clock,
            desk =>
                desk with
                {
                    OpenKey = (path, passphrase, ring) =>
                        DriveCommand.Tried(Path.Combine(_folder, path), passphrase, Book.Study, ring, Outside("").KeyFile),
                    WriteReport = () => ReportCommand.Write(Book, _folder),
                    Version = ReportCommand.ProgramVersion,
                },
            columns,
            rows,
            screen
        );

    public void Dispose()
    {
        _said.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
