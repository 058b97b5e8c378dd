using System.Text;
using System.Text.RegularExpressions;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Demonstration;
using FieldSession.Tests.Journeys;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Ptys;

/// <summary>
/// The demo day typed into the real program in a real terminal, from calibration to the report: the same journal as by lines.
/// </summary>
[Collection(Pty.Collection)]
public sealed partial class TheWholeDayInTmux : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-tmux").FullName;

    private string StudyPath => Path.Combine(_folder, "day.study");

    private string KeyPath => Path.Combine(_folder, "day.key");

    [TmuxFact]
    public void The_day_in_a_real_terminal_ends_in_the_same_journal_as_the_day_by_lines()
    {
        Lay();
        using (Tmux tmux = new(_folder, ProgramInATerminal.Path, "drive", StudyPath))
        {
            Drive(tmux);
            Predict(tmux);
            Reveal(tmux);
            tmux.Press("F7").Until("report").Type("w").Until("report.md").Press("C-q");
        }

        Assert.True(File.Exists(Path.Combine(_folder, "report.md")));
        using ADemoDay byLines = TheWholeDayByEnter.Driven();
        Assert.Equal(byLines.Book.Lines.Select(Told), JournalCheck.Of(StudyPath).LinesToFirstFailing.Select(Told));
    }

    // Times, the nonce, and the hashes that follow from them are those of this very day.
    private static string Told(Line line) => $"{line.Kind} {Hash().Replace(Encoding.UTF8.GetString(line.Body), "#")}";

    [GeneratedRegex("[0-9a-f]{32,}|[0-9]{4}-[0-9]{2}-[0-9]{2}T[^\"]*")]
    private static partial Regex Hash();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Lay()
    {
        Surroundings outside = new()
        {
            Input = TextReader.Null,
            Output = TextWriter.Null,
            Error = TextWriter.Null,
            Clock = new StoppedClock(),
            Lot = new SeededLot(11),
            Passphrase = ADemoDay.Demo.Passphrase,
            Laptop = Surroundings.OfThisProcess().Laptop,
        };
        using OpenedStudy laid = OpenedStudy.New(StudyPath, outside);
        Assert.Equal(ExitCode.Done, DemoDay.Lay(ADemoDay.Demo, laid.Logbook, KeyPath, outside));
    }

    // Each line is waited for by the count of saved lines in the header.
    private void Drive(Tmux tmux)
    {
        int saved = JournalCheck.Of(StudyPath).LinesToFirstFailing.Count;
        tmux.Until($"saved {saved} ");
        foreach ((_, string line) in ADemoDay.Lines("quillmere/day.txt"))
        {
            bool startsRun = line.StartsWith("run ", StringComparison.Ordinal);
            bool isWords = char.IsAsciiLetter(line[0]) && !startsRun;
            saved++;
            (startsRun ? tmux.Answer("") : tmux.Type(isWords ? $":{line}" : line).Press("Enter")).Until($"saved {saved} ");
        }

        tmux.Until("F4     the order is driven and the meter checked").Press("F4").Until("parked").Answer("parked").Until("give or take");
    }

    private static void Predict(Tmux tmux)
    {
        tmux.Press("F5").Until("who");
        foreach (string answer in new[] { "1", "2", "4", "", "n", "1", "not worth it for town", "" })
        {
            tmux.Answer(answer);
        }

        tmux.Until("locked, hidden");
        foreach (string answer in new[] { "1", "2", "3", "", "", "1", "", "" })
        {
            tmux.Answer(answer);
        }

        tmux.Until("not worth it for town");
    }

    private void Reveal(Tmux tmux)
    {
        tmux.Press("F6").Until("key");
        foreach (string answer in new[] { KeyPath, ADemoDay.Demo.Passphrase, "STANDARD", "STIFFENED", "Ro", "Ilse", "" })
        {
            tmux.Answer(answer);
        }

        tmux.Until("ok  it gives the published commitment");
    }
}
