using FieldSession.State;
using FieldSession.Tests.Faults;
using FieldSession.Tests.Making;
using FieldSession.Tests.Ptys;

namespace FieldSession.Tests.Windows;

/// <summary>
/// The screens in a console of Windows with an old code page. Wine's console knows no control codes, so this is how a console is drawn that
/// is set to the old ways.
/// After the window has changed its size, what is shown is read from the console: wine doesn't tell its own terminal of the new size, and
/// what that shows is garbled.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class ScreensOfWindowsTests
{
    private static string Program => Wine.OnDriveZ(Path.Combine(Repository.Root, ".artifacts", "programs", "win-x64", "fieldsession.exe"));

    [WineFact]
    public void A_run_is_driven_in_a_console_and_the_console_is_given_back_as_it_was()
    {
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready);
        using (Tmux console = InAConsole(day, $"chcp 850 & {Program} drive {Wine.OnDriveZ(day.Study)} & chcp & pause"))
        {
            DriveOn(console);
            Assert.Contains("█", console.Screen, StringComparison.Ordinal);
            Assert.DoesNotContain("?─", console.Screen, StringComparison.Ordinal);
            // the last picture is wiped, and the first answer of 'chcp' with it
            console.Press("C-q").Until("850").Until("Press any key");
            Assert.DoesNotContain("NEXT", console.Screen, StringComparison.Ordinal);
            Assert.DoesNotContain("█", console.Screen, StringComparison.Ordinal);
        }

        Study study = day.Now();
        Assert.Equal("58-60", study.RunOn!.LastReading!.Levels.ToString());
        Assert.Equal("naß", Assert.Single(study.Notes).Words);
    }

    [WineTheory]
    [InlineData(90, 30)]
    [InlineData(70, 20)]
    public void A_window_that_changes_its_size_is_drawn_whole_and_costs_no_key(int columns, int rows)
    {
        string resized = Wine.OnDriveZ(Wine.Built("resized.c", "resized.exe", "x86_64-w64-mingw32-gcc"));
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready);
        string shown = day.Here("shown.txt");
        using Tmux console = InAConsole(
            day,
            $"start /b {resized} 12000 {columns} {rows} {Wine.OnDriveZ(shown)} & {Program} drive "
                + $"{Wine.OnDriveZ(day.Study)} & "
                + "echo left & pause"
        );
        DriveOn(console);
        console.Until(() => File.Exists(shown));
        string[] lines = File.ReadAllLines(shown);
        Assert.Equal(rows, lines.Length);
        Assert.All(lines, line => Assert.Equal(columns, line.Length));
        Assert.StartsWith(" NEXT 2 of 3 ", lines[1], StringComparison.Ordinal);
        Assert.StartsWith(" Enter store ", lines[^1], StringComparison.Ordinal);
        Assert.DoesNotContain(lines, line => line.Contains('\u001b'));

        console.Type("6062").Press("Enter").Until(() => day.Now().RunOn!.Readings.Count() == 2).Press("C-q").Until("left");
    }

    private static void DriveOn(Tmux console)
    {
        console.Until("T-7").Answer("").Until("NEXT 1 of 3").Answer("5860").Until("NEXT 2 of 3").Answer("; naß").Until("note on 1");
        Thread.Sleep(500);
    }

    private static Tmux InAConsole(AtThePrompt day, string line) =>
        new(day.Here("."), "env", "FIELDSESSION_EXE=cmd.exe", ProgramInATerminal.Path, "/c", line);
}
