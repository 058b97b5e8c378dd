using FieldSession.State;
using FieldSession.Tests.Faults;
using FieldSession.Tests.Making;
using FieldSession.Tests.Ptys;

namespace FieldSession.Tests.Windows;

/// <summary>
/// The screens in a console of Windows with an old code page. Wine's console knows no control codes, so this is how a console is drawn that
/// is set to the old ways.
/// What wine draws after the window has changed its size can't be judged: it does not tell its own terminal.
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
            console.Press("C-q").Until(() => console.Screen.Split("850").Length == 3);
        }

        Study study = day.Now();
        Assert.Equal("58-60", study.RunOn!.LastReading!.Levels.ToString());
        Assert.Equal("naß", Assert.Single(study.Notes).Words);
    }

    [WineFact]
    public void A_window_that_changes_its_size_costs_no_key()
    {
        string resized = Wine.OnDriveZ(Wine.Built("resized.c", "resized.exe", "x86_64-w64-mingw32-gcc"));
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready);
        using (
            Tmux console = InAConsole(
                day,
                $"start /b {resized} 12000 90 24 & {Program} drive {Wine.OnDriveZ(day.Study)} & echo left & pause"
            )
        )
        {
            DriveOn(console);
            Thread.Sleep(TimeSpan.FromSeconds(12));
            console.Type("6062").Press("Enter").Until(() => day.Now().RunOn!.Readings.Count() == 2).Press("C-q").Until("left");
        }
    }

    private static void DriveOn(Tmux console)
    {
        console.Until("T-7").Answer("").Until("NEXT 1 of 3").Answer("5860").Until("NEXT 2 of 3").Answer("; naß").Until("note on 1");
        Thread.Sleep(500);
    }

    private static Tmux InAConsole(AtThePrompt day, string line) =>
        new(day.Here("."), "env", "FIELDSESSION_EXE=cmd.exe", ProgramInATerminal.Path, "/c", line);
}
