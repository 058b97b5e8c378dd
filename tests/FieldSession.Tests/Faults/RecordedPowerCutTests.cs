using System.Collections.Concurrent;
using System.Text;
using FieldSession.Journal;

namespace FieldSession.Tests.Faults;

/// <summary>
/// The writes and flushes of the real program are recorded, and the power is cut after each of them in the record: the files are laid
/// as a disk may then hold them, and the real program opens them. FIELDSESSION_POWER_CUTS sets how many such states are tried.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class RecordedPowerCutTests(Stages stages, ITestOutputHelper output) : IClassFixture<Stages>
{
    [NativeFaultFact]
    public void No_power_cut_in_any_command_loses_what_was_answered()
    {
        Job[] jobs = [.. Job.All(stages).Where(job => !job.OnlyReads)];
        Try("", [.. jobs.Select(job => new Recording(job, stages, fault: null))], FaultTests.Number("FIELDSESSION_POWER_CUTS", 30));
    }

    [CallFaultFact]
    public void After_a_flush_that_failed_once_no_power_cut_loses_what_was_answered_since()
    {
        Job enter = Job.All(stages).Single(job => job.Name == "enter");
        Recording[] failing =
        [
            .. Enumerable
                .Range(1, 8)
                .Select(nth => new Recording(enter, stages, new CallFault("fsync", nth, 1, CallFault.InputOutput, ".journal"))),
        ];
        Try("a flush of the journal failed: ", failing, FaultTests.Number("FIELDSESSION_POWER_CUTS", 16) / 2);
    }

    private void Try(string what, Recording[] recordings, int states)
    {
        ConcurrentBag<(string Name, int Acknowledged, List<string> Broken)> tried = [];
        Parallel.For(
            0,
            states,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            seed =>
            {
                Recording recording = recordings[seed % recordings.Length];
                tried.Add((recording.Job.Name, recording.Acknowledged, recording.CutPower(new Random(seed))));
            }
        );
        string[] broken =
        [
            .. tried.SelectMany(state => state.Broken.Select(word => $"{state.Name}: {word}")).Order(StringComparer.Ordinal),
        ];
        output.WriteLine(
            $"{what}{tried.Count} states of {recordings.Sum(recording => recording.Calls)} calls, "
                + $"{recordings.Sum(recording => recording.Acknowledged)} acts acknowledged in the records, {broken.Length} broken"
        );
        Assert.True(broken.Length == 0, $"{broken.Length} of {tried.Count}:\n{string.Join('\n', broken.Distinct())}");
    }

    /// <summary>A command's calls, and the promise it had given at each of them.</summary>
    private sealed class Recording
    {
        private readonly Stages _stages;
        private readonly List<CallMade> _calls;
        private readonly string _from;

        public Recording(Job job, Stages stages, CallFault? fault)
        {
            Job = job;
            _stages = stages;
            using ALaidStage laid = stages.Lay(job.Stage);
            _from = laid.Path;
            _ = job.Run(laid, fault);
            _calls = CallMade.ReadAll(laid.Record);
        }

        public Job Job { get; }

        public int Calls => _calls.Count;

        public int Acknowledged => Answers(_calls.Count).Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal));

        public List<string> CutPower(Random chance)
        {
            int cut = chance.Next(_calls.Count + 1);
            using ALaidStage laid = _stages.Lay(Job.Stage);
            IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here(Job.Study));
            HashSet<string> others =
            [
                .. Invariant
                    .LinesOf(laid.Here("other/day.study"))
                    .Concat(Invariant.LinesOf(laid.Here("damaged/day.study")))
                    .Select(line => line.Hash),
            ];
            Dictionary<string, string> whole = laid.Files();
            LayState(laid, cut, chance);
            List<string> broken = [.. Torn(laid, whole, written: Written(whole))];
            broken.AddRange(Trial.OpenedAgain(Job, laid, isRenameAtomic: false));
            IReadOnlyList<Line> after = Invariant.LinesOf(laid.Here(Job.Study));
            broken.AddRange(
                new Invariant(before).BrokenInStudy(
                    after,
                    Job.TypedLines,
                    Answers(cut),
                    "",
                    line => others.Contains(line.Hash) || Trial.MayAdd(Job, line)
                )
            );
            return [.. broken.Select(word => $"{word} (cut after {cut} of {_calls.Count} calls)")];
        }

        private void LayState(ALaidStage laid, int cut, Random chance)
        {
            RecordedDisk disk = DiskWith(laid.Files());
            _calls.Take(cut).ToList().ForEach(disk.Take);
            Dictionary<string, byte[]> left = disk.After(chance)
                .ToDictionary(file => Path.GetRelativePath(_from, file.Key), file => file.Value);
            foreach (string gone in laid.Files().Keys.Except(left.Keys))
            {
                File.Delete(laid.Here(gone));
            }

            foreach ((string name, byte[] bytes) in left)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(laid.Here(name))!);
                File.WriteAllBytes(laid.Here(name), bytes);
            }
        }

        // what the shell had been told by then
        private string[] Answers(int cut) =>
            Job.TakesActs
                ? Encoding
                    .UTF8.GetString([.. _calls.Take(cut).Where(call => call.Name == "say").SelectMany(call => call.Bytes)])
                    .Split('\n')
                    .Where(line => line.StartsWith("ok ", StringComparison.Ordinal) || line.StartsWith("no ", StringComparison.Ordinal))
                    .ToArray()
                : [];

        // of the files that a command makes, each is as it was or whole
        private IEnumerable<string> Torn(ALaidStage laid, Dictionary<string, string> whole, Dictionary<string, byte[]> written)
        {
            if (Job.Makes.Length == 0)
            {
                yield break;
            }

            foreach (
                (string name, string bytes) in laid.Files(Job.Makes)
                    .Where(file => !file.Key.EndsWith(".unfinished", StringComparison.Ordinal))
            )
            {
                if (
                    bytes != whole.GetValueOrDefault(name)
                    && written.GetValueOrDefault(name) is { } made
                    && bytes != Convert.ToBase64String(made)
                )
                {
                    yield return $"TORN: {name}";
                }
            }
        }

        private Dictionary<string, byte[]> Written(Dictionary<string, string> before)
        {
            RecordedDisk disk = DiskWith(before);
            _calls.ForEach(disk.Take);
            return disk.Whole().ToDictionary(file => Path.GetRelativePath(_from, file.Key), file => file.Value);
        }

        private RecordedDisk DiskWith(Dictionary<string, string> files) =>
            new(files.Select(file => (Path.Combine(_from, file.Key), Convert.FromBase64String(file.Value))));
    }
}
