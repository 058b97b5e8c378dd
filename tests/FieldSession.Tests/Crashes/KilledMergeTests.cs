using System.Diagnostics;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// Two laptops enter, and the real program is killed with signal 9 while one takes the other's lines in. Set FIELDSESSION_KILLS to a
/// number to kill more often than the few times of every build.
/// </summary>
public sealed class KilledMergeTests(ITestOutputHelper output)
{
    private const int KillsPerStudy = 40;

    [Fact]
    public void No_kill_during_a_merge_loses_a_line_of_either_laptop()
    {
        int kills = int.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_KILLS"), out int more) ? more : 2;
        int cut = 0;
        int lines = 0;
        for (int done = 0; done < kills; done += KillsPerStudy)
        {
            (int cutHere, int linesHere) = KillOnTwoLaptops(new Random(done), Math.Min(KillsPerStudy, kills - done));
            cut += cutHere;
            lines += linesHere;
        }

        output.WriteLine(
            $"{kills} merges killed, {cut} of them with part of the other laptop's lines to take in; {lines} acts of two laptops, 0 lost"
        );
        Assert.True(lines > kills);
    }

    // How many kills came before all was taken in, and how many lines there were in the end.
    private static (int Cut, int Lines) KillOnTwoLaptops(Random chance, int kills)
    {
        using Folder here = new();
        using Folder there = new();
        new EndlessDay(here).Begin();
        File.Copy(here.Study, there.Study);
        File.Copy(here.Text, there.Text);
        TimeSpan mergeTakes = TimeSpan.FromMilliseconds(400);
        int cut = 0;
        for (int i = 0; i < kills; i++)
        {
            Enter(here, chance.Next(1, 40));
            Enter(there, chance.Next(1, 400));
            HashSet<string> before = [.. Hashes(here)];
            HashSet<string> both = [.. before, .. Hashes(there)];
            byte[] other = File.ReadAllBytes(there.Text);

            KillMerge(here, there, mergeTakes * (0.3 + chance.NextDouble()));
            AssertWhole(here);
            HashSet<string> after = [.. Hashes(here)];
            Assert.Superset(before, after);
            Assert.Subset(both, after);
            Assert.Equal(other, File.ReadAllBytes(there.Text));
            cut += after.SetEquals(both) ? 0 : 1;

            mergeTakes = Merge(here, there);
            AssertWhole(here);
            Assert.Equal(both.Order(StringComparer.Ordinal), Hashes(here).Order(StringComparer.Ordinal));
        }

        return (cut, Hashes(here).Count);
    }

    private static void Enter(Folder laptop, int notes)
    {
        int before = Hashes(laptop).Count;
        using RunningProgram program = new("enter", laptop.Study);
        program.Type(Enumerable.Range(before, notes).Select(number => $"; act {number}"));
        program.EndInput();
        Assert.Equal(0, program.WaitForEnd());
        Assert.Equal(notes, program.Acknowledged.Count);
        // the first line that takes note of what the other laptop brought is between
        Assert.InRange(Hashes(laptop).Count, before + notes, before + notes + 1);
    }

    private static void KillMerge(Folder here, Folder there, TimeSpan after)
    {
        using RunningProgram program = new("merge", here.Study, there.Study);
        Thread.Sleep(after);
        program.Kill();
    }

    private static TimeSpan Merge(Folder here, Folder there)
    {
        Stopwatch watch = Stopwatch.StartNew();
        using RunningProgram program = new("merge", here.Study, there.Study);
        Assert.Equal(0, program.WaitForEnd());
        return watch.Elapsed;
    }

    private static void AssertWhole(Folder laptop)
    {
        JournalCheck check = JournalCheck.Of(laptop.Study);
        Assert.True(check.Text.Holds && check.Store.Holds && check.FirstDifference is null, $"{check}");
    }

    private static List<string> Hashes(Folder laptop) =>
        [.. TextCopy.Read(new Disk().ReadAll(laptop.Text)).Valid.Select(line => line.Hash)];
}
