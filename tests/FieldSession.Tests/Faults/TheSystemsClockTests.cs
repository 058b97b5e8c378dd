using System.Runtime.CompilerServices;
using FieldSession.Journal;
using FieldSession.Tests.Crashes;

namespace FieldSession.Tests.Faults;

/// <summary>The system's clock is set while the real program runs (libfaketime, from the system's package of that name).</summary>
[Collection(FaultTests.Collection)]
public sealed class TheSystemsClockTests(Stages stages) : IClassFixture<Stages>
{
    private static readonly string? Library =
        Directory.Exists("/usr/lib") && OperatingSystem.IsLinux()
            ? Directory
                .GetDirectories("/usr/lib")
                .Select(folder => Path.Combine(folder, "faketime", "libfaketimeMT.so.1"))
                .FirstOrDefault(File.Exists)
            : null;

    [ClockFact]
    public void A_clock_set_back_by_hours_while_driving_does_not_count()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        IReadOnlyList<Line> added = Driven(laid, "UTC", 0, -5 * 3600, -86400, 0);

        DateTimeOffset[] times = [.. added.Select(line => line.At)];
        Assert.Equal(times.Order(), times);
        Assert.True(times[^1] - times[0] < TimeSpan.FromHours(1), $"{times[0]} to {times[^1]}");
    }

    [ClockFact]
    public void A_clock_set_forward_and_back_again_while_driving_loses_no_act_and_keeps_their_order()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        Driven(laid, "UTC", 0, 9 * 3600, -86400, 0);

        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
    }

    [ClockFact]
    public void Between_two_sittings_the_order_of_the_journal_stays_whatever_the_clock_says()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        Driven(laid, "UTC", 3600);
        Driven(laid, "UTC", -20 * 3600);
        ProgramRun compared = ProgramRun.In(laid.Path, ["compare", "day.study", "--json"]);

        Assert.DoesNotContain("\"minutes\": -", compared.Said, StringComparison.Ordinal);
        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
    }

    [ClockFact]
    public void The_hour_that_comes_twice_in_autumn_is_counted_once()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        DateTimeOffset summerTimeEnds = new(2026, 10, 25, 1, 0, 0, TimeSpan.Zero);
        int before = (int)(summerTimeEnds - DateTimeOffset.UtcNow).TotalSeconds;
        IReadOnlyList<Line> added = Driven(laid, "Europe/Berlin", before - 60, before + 60);

        Assert.All(added, line => Assert.Equal(TimeSpan.Zero, line.At.Offset));
        Assert.Equal(added.Select(line => line.At).Order(), added.Select(line => line.At));
        Assert.InRange(added[^1].At - added[0].At, TimeSpan.Zero, TimeSpan.FromMinutes(10));
    }

    // types an act, sets the clock to an offset in seconds, and so on
    private static IReadOnlyList<Line> Driven(ALaidStage laid, string zone, params int[] offsets)
    {
        string study = laid.Here("day.study");
        IReadOnlyList<Line> before = Invariant.LinesOf(study);
        string clock = laid.Here("clock");
        Set(clock, offsets[0]);
        string[] typed = [.. offsets.Select((offset, i) => $"; act {i}, clock at {offset}")];
        (string, string)[] settings =
        [
            ("LD_PRELOAD", Library!),
            ("FAKETIME_TIMESTAMP_FILE", clock),
            ("FAKETIME_NO_CACHE", "1"),
            ("FAKETIME_DONT_FAKE_MONOTONIC", "1"),
            ("TZ", zone),
            ("XDG_STATE_HOME", laid.Here("state")),
        ];
        using RunningProgram program = RunningProgram.With(settings, "enter", study);
        for (int act = 0; act < typed.Length; act++)
        {
            Set(clock, offsets[act]);
            program.Type([typed[act]]);
            program.WaitForAnswers(act + 1);
        }

        program.EndInput();
        Assert.Equal(0, program.WaitForEnd());
        IReadOnlyList<Line> after = Invariant.LinesOf(study);
        Assert.Empty(new Invariant(before).BrokenInStudy(after, typed, [.. program.Answers], "", line => line.Kind == EntryKinds.Joined));
        return [.. after.Skip(before.Count)];
    }

    private static void Set(string clock, int seconds)
    {
        File.WriteAllText(clock + ".new", $"{(seconds < 0 ? "" : "+")}{seconds}");
        File.Move(clock + ".new", clock, overwrite: true);
    }

    /// <summary>Passed over where the library is missing.</summary>
    [AttributeUsage(AttributeTargets.Method)]
    private sealed class ClockFactAttribute : FactAttribute
    {
        public ClockFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
            : base(file, line) => Skip = Library is null ? "libfaketime is missing (package faketime)" : null;
    }
}
