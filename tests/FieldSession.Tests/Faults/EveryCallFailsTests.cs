using System.Collections.Concurrent;

namespace FieldSession.Tests.Faults;

/// <summary>
/// Every call by which a command writes fails once, and from there on, in every way a disk has. FIELDSESSION_CALL_FAULTS sets how many
/// of all these are tried, drawn by lot; 1000000 is all of them; FIELDSESSION_CALL_FAULTS_DONE leaves out the first ones, so that a long
/// run can be made in parts. FIELDSESSION_PROGRAM names the native program.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class EveryCallFailsTests(Stages stages, ITestOutputHelper output) : IClassFixture<Stages>
{
    [NativeFaultFact]
    public void No_failing_call_of_any_command_loses_an_act_or_is_told_in_a_wrong_word()
    {
        WellRun[] well = [.. Job.All(stages).Select(job => WellRun.Of(job, stages))];
        Random chance = new(1);
        (WellRun Well, CallFault Fault, double Turn)[] all = [.. well.SelectMany(run => Turns(run, chance)).OrderBy(one => one.Turn)];
        int wanted = FaultTests.Number("FIELDSESSION_CALL_FAULTS", 20);
        int done = FaultTests.Number("FIELDSESSION_CALL_FAULTS_DONE", 0);
        ConcurrentBag<Trial> trials = [];
        Parallel.ForEach(
            all.Skip(done).Take(wanted),
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            one => trials.Add(Trial.Of(one.Well, one.Fault, stages))
        );

        foreach (var job in trials.GroupBy(trial => trial.Well.Job.Name).OrderBy(job => job.Key, StringComparer.Ordinal))
        {
            output.WriteLine(
                $"{job.Key}: {job.Count()} faults, {job.Sum(trial => trial.Failed)} calls failed, "
                    + $"{job.Sum(trial => trial.Acknowledged)} acts acknowledged, {job.Count(trial => trial.Broken.Count > 0)} broken"
            );
        }

        output.WriteLine(
            $"{trials.Count} faults of {all.Length}, {trials.Sum(trial => trial.Failed)} calls failed, "
                + $"{trials.Sum(trial => trial.Acknowledged)} acts acknowledged"
        );
        string[] broken = [.. trials.Where(trial => trial.Broken.Count > 0).Select(trial => $"{trial}").Order(StringComparer.Ordinal)];
        Assert.True(broken.Length == 0, $"{broken.Length} of {trials.Count}:\n{string.Join('\n', broken)}");
        Assert.True(trials.Sum(trial => trial.Failed) >= trials.Count / 2);
    }

    // in an order by lot in which each command comes as often as the others as long as it has faults left
    private static IEnumerable<(WellRun Well, CallFault Fault, double Turn)> Turns(WellRun run, Random chance)
    {
        CallFault[] faults = [.. CallFault.Of(run.Calls)];
        chance.Shuffle(faults);
        return faults.Select((fault, i) => (run, fault, i + chance.NextDouble()));
    }

    [NativeFaultFact]
    public void A_command_that_only_reads_writes_nothing_beside_the_study()
    {
        foreach (Job job in Job.All(stages).Where(job => job.OnlyReads))
        {
            CallMade[] changes = [.. WellRun.Of(job, stages).Calls.Where(call => call.IsChange)];

            Assert.True(changes.Length == 0, $"{job}: {string.Join(", ", changes.Select(call => $"{call.Name} {call.Path}"))}");
        }
    }
}
