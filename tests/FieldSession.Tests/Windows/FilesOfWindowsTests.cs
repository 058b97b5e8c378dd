using System.Diagnostics;
using FieldSession.Journal;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Faults;

namespace FieldSession.Tests.Windows;

/// <summary>
/// What Windows does to files that other systems don't: programs that keep all others out of a file, and a flush of its own name.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class FilesOfWindowsTests(Stages stages) : IClassFixture<Stages>
{
    private const int AScannersSecondMs = 1000;

    [WineTheory]
    [InlineData(DayStage.Planned, "start plan day.study")]
    [InlineData(DayStage.Started, "seal day.study --specs specs.txt --key b.key")]
    [InlineData(DayStage.Ready, "enter day.study")]
    [InlineData(DayStage.Driven, "export day.study --out tables")]
    [InlineData(DayStage.Driven, "merge day.study other/day.study")]
    [InlineData(DayStage.Revealed, "report day.study --out report")]
    public void A_virus_scanner_that_holds_every_written_file_for_a_second_is_waited_for(object stage, string words)
    {
        using ALaidStage laid = stages.Lay((DayStage)stage);
        using Process scanner = Wine.Start(Scanner, Wine.OnDriveZ(laid.Path), $"{AScannersSecondMs}");
        Assert.Equal("looking", scanner.StandardOutput.ReadLine()?.Trim());

        ProgramRun run = ProgramRun.In(
            laid.Path,
            words.Split(' '),
            words.StartsWith("enter", StringComparison.Ordinal) ? "; one\n; two\n" : ""
        );
        // a study that is open is held once it is closed
        ProgramRun verified = ProgramRun.In(laid.Path, ["verify", "day.study"]);
        scanner.StandardInput.Close();
        string held = scanner.StandardOutput.ReadToEnd();
        scanner.WaitForExit();

        Assert.True(run.Code == 0, $"{run.Code}: {run.Said}\n{held}");
        Assert.Contains("holding", held, StringComparison.Ordinal);
        Assert.True(verified.Code == 0, $"{verified.Code}: {verified.Said}\n{held}");
        Assert.DoesNotContain(laid.Files().Keys, name => name.EndsWith(".unfinished", StringComparison.Ordinal));
    }

    [WineFact]
    public void A_study_that_is_open_can_be_looked_at()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        using RunningProgram first = new("enter", laid.Here("day.study"));
        first.Type(["; one", "; two"]);
        first.WaitForAnswers(2);

        Assert.Equal(0, ProgramRun.In(laid.Path, ["review", "day.study"]).Code);
        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
        first.EndInput();
        Assert.Equal(0, first.WaitForEnd());
    }

    [WineFact]
    public void Each_act_is_flushed_before_it_is_answered_and_a_flush_that_fails_is_believed()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        string record = Directory.CreateDirectory(laid.Here("flushes")).FullName;
        IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here("day.study"));
        string library = Wine.Built("flushes.c", "flushes.so", "cc", "-shared", "-fPIC");
        using RunningProgram program = RunningProgram.With([("LD_PRELOAD", library), ("FLUSHES", record)], "enter", laid.Here("day.study"));
        program.Type(["; one"]);
        program.WaitForAnswers(1);
        int made = Flushes(record);
        program.Type(["; two", "; three", "; four"]);
        program.WaitForAnswers(4);
        Assert.True(Flushes(record) - made >= 3, $"{made} flushes for one act, {Flushes(record)} for four");

        File.WriteAllText(Path.Combine(record, "fail"), "");
        program.Type(["; five"]);
        program.WaitForAnswers(5);
        Assert.Contains("not saved", Assert.Single(program.Refused), StringComparison.Ordinal);
        File.Delete(Path.Combine(record, "fail"));
        program.Type(["; six"]);
        program.WaitForAnswers(6);
        program.EndInput();
        program.WaitForEnd();

        string[] notes = [.. Logbook.Fold(Invariant.LinesOf(laid.Here("day.study"))).Notes.Select(note => note.Words)];
        Assert.All(program.Acknowledged, act => Assert.Contains(act.Typed[2..], notes));
        Assert.True(Invariant.LinesOf(laid.Here("day.study")).Count > before.Count);
    }

    private static string Scanner => Wine.Built("scanner.c", "scanner.exe", "x86_64-w64-mingw32-gcc", "-municode");

    private static int Flushes(string record) =>
        File.ReadLines(Path.Combine(record, "made"))
            .Count(line => line.StartsWith("0 ", StringComparison.Ordinal) && line.EndsWith(".journal", StringComparison.Ordinal));
}
