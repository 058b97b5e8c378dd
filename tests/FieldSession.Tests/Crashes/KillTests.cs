using System.Diagnostics;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// The real program is killed with signal 9 again and again on one study. Set FIELDSESSION_KILLS to a number to kill more
/// often than the few times of every build.
/// </summary>
public sealed class KillTests(ITestOutputHelper output)
{
    private const int KillsPerStudy = 40;
    private const string Tables = "tables";

    [Fact]
    public void No_kill_loses_an_acknowledged_act()
    {
        int kills = int.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_KILLS"), out int more) ? more : 10;
        Tally tally = new();
        for (int seed = 0; tally.Kills < kills; seed++)
        {
            KillOnOneStudy(new Random(seed), Math.Min(KillsPerStudy, kills - tally.Kills), tally);
        }

        output.WriteLine($"{tally}");
        Assert.Equal(kills, tally.Kills);
        Assert.True(tally.Acknowledged > kills, $"{tally}");
    }

    private static void KillOnOneStudy(Random chance, int kills, Tally tally)
    {
        using Folder folder = new();
        EndlessDay day = new(folder);
        day.Begin();
        for (int i = 0; i < kills; i++)
        {
            KilledWhile killed = (KilledWhile)(i % 5);
            List<(int Line, string Typed)> acknowledged =
                killed == KilledWhile.Exporting ? KillExport(folder, chance, tally) : Kill(killed, folder, day, chance, tally);
            int lines = day.AssertHolds(acknowledged, $"{killed}, kill {i}");
            tally.Note(killed, acknowledged.Count, acknowledged.Count == 0 ? 0 : lines - acknowledged[^1].Line);
        }

        using RunningProgram last = new("enter", folder.Study);
        last.Type(["; all is well"]);
        last.EndInput();
        Assert.Equal(0, last.WaitForEnd());
        day.AssertHolds(last.Acknowledged, "opened and closed after all");
        Assert.Equal(["day.journal", "day.study"], folder.Names);
        using RunningProgram export = new("export", folder.Study, "--out", folder[Tables]);
        Assert.Equal(0, export.WaitForEnd());
        Assert.DoesNotContain(Directory.GetFiles(folder[Tables]), file => file.EndsWith(".unfinished", StringComparison.Ordinal));
    }

    private static List<(int Line, string Typed)> KillExport(Folder folder, Random chance, Tally tally)
    {
        using RunningProgram program = new("export", folder.Study, "--out", folder[Tables]);
        // it begins to write at about the time at which an opened study answers
        Thread.Sleep(tally.OpeningTook * (0.5 + chance.NextDouble()));
        program.Kill();
        return [];
    }

    private static List<(int Line, string Typed)> Kill(KilledWhile killed, Folder folder, EndlessDay day, Random chance, Tally tally)
    {
        int closesAfter = chance.Next(1, 30);
        List<string> acts = day.Acts(
            killed switch
            {
                KilledWhile.Closing => closesAfter,
                KilledWhile.Opening => 2,
                _ => 300,
            }
        );
        Stopwatch sinceStart = Stopwatch.StartNew();
        using RunningProgram program = new("enter", folder.Study);
        program.Type(acts);
        switch (killed)
        {
            case KilledWhile.Entering:
                program.WaitForAnswers(1);
                tally.OpeningTook = sinceStart.Elapsed;
                program.WaitForAnswers(chance.Next(1, 100));
                break;
            case KilledWhile.Checkpointing:
                // LiteDB's log is merged every 200 lines, by a thread of its own
                program.WaitForAnswers(chance.Next(195, 260));
                Thread.Sleep(chance.Next(12));
                break;
            case KilledWhile.Opening:
                Thread.Sleep(tally.OpeningTook * chance.NextDouble());
                break;
            default:
                program.WaitForAnswers(closesAfter);
                program.EndInput();
                Thread.Sleep(chance.Next(25));
                break;
        }

        program.Kill();
        Assert.Empty(program.Refused);
        return program.Acknowledged;
    }

    private enum KilledWhile
    {
        Entering,
        Checkpointing,
        Opening,
        Closing,
        Exporting,
    }

    private sealed class Tally
    {
        private readonly int[] _kills = new int[Enum.GetValues<KilledWhile>().Length];

        public TimeSpan OpeningTook { get; set; }

        public int Kills => _kills.Sum();

        public int Acknowledged { get; private set; }

        private int WrittenUnanswered { get; set; }

        public void Note(KilledWhile killed, int acknowledged, int writtenUnanswered)
        {
            _kills[(int)killed]++;
            Acknowledged += acknowledged;
            WrittenUnanswered += writtenUnanswered;
        }

        public override string ToString() =>
            $"{Kills} kills ({string.Join(", ", Enum.GetValues<KilledWhile>().Select(k => $"{k} {_kills[(int)k]}"))}), "
            + $"{Acknowledged} acts acknowledged, 0 lost, {WrittenUnanswered} written whose answer did not come";
    }
}
