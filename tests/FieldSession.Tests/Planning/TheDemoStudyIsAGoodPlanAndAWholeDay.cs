using System.Globalization;
using System.Reflection;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Planning;

public class TheDemoStudyIsAGoodPlanAndAWholeDay
{
    [Fact]
    public void The_plan_reads_and_nothing_speaks_against_it()
    {
        PlanReading reading = Demo();
        Plan plan = reading.Plan!;
        Assert.Equal(("QW-0114", 2, 11), (plan.StudyName, plan.SpecCount, plan.Route.Count));
        Assert.Equal(["Ro", "Tam"], plan.Crew.Select(member => member.Name));
        Assert.Equal("Harrinvik viaduct, 3 joints", plan.Route[6].Name);
        Assert.Equal([4, 7], plan.Route.Where(segment => segment.Kind.IsImpact).Select(segment => segment.Number));
        Assert.All(
            plan.Route,
            segment => Assert.True(segment.NominalDb is not null && segment.StartMark is not null && segment.Limit is not null)
        );
        Assert.Empty(reading.Warnings);
    }

    [Fact]
    public void The_custodians_list_fits_the_plan() =>
        Assert.Equal(["STANDARD", "STIFFENED"], SpecList.Parse(Text("specs.txt"), Demo().Plan!.SpecCount, out _)!.Names);

    // own calculation of the demo's check values, docs/formulas.md: pairs in the brackets 1-2-3, 3-4-5, 5-6-7 and 7-8-9, a spoilt side left
    // out
    [Fact]
    public void Every_line_of_the_day_is_taken_and_gives_the_known_paired_differences()
    {
        Study study = Driven();
        Assert.Equal(["417", "862", "417", "862", "417", "862", "417", "862", "417"], study.Runs.Select(run => run.Code.Digits));
        Assert.Equal(99, study.Runs.Sum(run => run.Readings.Count()));
        Assert.Equal(11, study.Runs.Sum(run => run.Readings.Count(reading => reading.Spoilt is not null)));
        double[] all = [.. Pairs(study, reading => true)];
        double[] clean = [.. Pairs(study, reading => reading.Spoilt is null)];
        Assert.Equal((44, 38), (all.Length, clean.Length));
        Assert.Equal(0.96, all.Average(), 2);
        Assert.Equal(0.77, clean.Average(), 2);
    }

    [Fact]
    public void The_readings_lie_near_the_levels_that_the_plan_expects()
    {
        Plan plan = Demo().Plan!;
        Assert.All(
            Driven().Runs.SelectMany(run => run.Readings),
            reading =>
                Assert.InRange(
                    reading.Levels.MidpointDb - plan.Route[reading.Segment - 1].NominalDb!.Value,
                    -plan.Limits.NominalDistanceDb,
                    plan.Limits.NominalDistanceDb
                )
        );
    }

    private static IEnumerable<double> Pairs(Study study, Func<Reading, bool> counts) =>
        from middle in new[] { 1, 3, 5, 7 }
        from segment in Enumerable.Range(1, 11)
        let candidate = At(study, middle, segment)
        where counts(candidate)
        let sides = new[] { At(study, middle - 1, segment), At(study, middle + 1, segment) }.Where(counts).ToArray()
        where sides.Length > 0
        select candidate.Levels.MidpointDb - sides.Average(side => side.Levels.MidpointDb);

    private static Reading At(Study study, int run, int segment) => study.Runs[run].Readings.Single(reading => reading.Segment == segment);

    private static Study Driven()
    {
        const string At = "# at ";
        ADay day = new(Demo().Plan);
        foreach (string line in Text("day.txt").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.StartsWith(At, StringComparison.Ordinal))
            {
                day.Clock.Now = DateTimeOffset.Parse(line[At.Length..] + "Z", CultureInfo.InvariantCulture);
            }
            else if (!EntryText.IsPassedOver(line))
            {
                day.Typed(line);
            }
        }

        return day.Study;
    }

    private static PlanReading Demo() => PlanFolder.Parse(Text("plan.toml"), Text("route.csv"), "quillmere");

    private static string Text(string name)
    {
        using Stream stream = Assembly.Load("fieldsession").GetManifestResourceStream($"demo/quillmere/{name}")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
