using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

/// <summary>What somebody who types the day without screens may ask; nothing is written by it.</summary>
public sealed class QuestionsAtEnterTests
{
    [Fact]
    public void A_question_mark_lists_the_words_that_work_now_and_writes_nothing()
    {
        ADay day = new ADay().Ready();
        Outside outside = new("run 417", "?", "5860");

        Assert.Equal(ExitCode.No, EnterCommand.Run(day.Book, outside.World));

        Assert.Matches("^no 2: a question writes nothing; words that work now: .*, seg, .*'fieldsession help words'", outside.Answers[1]);
        Assert.DoesNotContain("calibration", outside.Answers[1], StringComparison.Ordinal);
        Assert.StartsWith("ok ", outside.Answers[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Parked_reads_the_last_run_back_with_what_is_spoilt_missed_and_doubtful()
    {
        ADay day = new ADay().Ready();
        Outside outside = new("parked", "run 417", "5860 t lorry", "m", "950", "parked");

        EnterCommand.Run(day.Book, outside.World);

        Assert.Equal("no 1: no run was driven yet", outside.Answers[0]);
        Assert.StartsWith(
            "no 6: a question writes nothing; Run 1 on 417: 1.1 Mill lane 58-60, spoilt: traffic; 1.2 Quarry road missed; 1.3 Bridge",
            outside.Answers[^1],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_example_names_people_codes_and_units_of_the_study_itself()
    {
        Plan plan = ADay.ShortPlan with
        {
            Crew = [new("Mara Lu", CrewMember.DriverSeat), new("Jon Bo", CrewMember.CoDriverSeat)],
            Units = UnitSystem.Imperial,
        };
        ADay day = new(plan);

        Assert.Equal("did you mean 'run 862'?", day.Refusal("rum 862").Instead);
        Assert.Contains("'rate Jon Bo coarse roar 6.25'", day.Refusal("rate").Instead, StringComparison.Ordinal);
        Assert.Contains("'choose Jon Bo first'", day.Refusal("choose").Instead, StringComparison.Ordinal);
        Assert.Contains("mi=132.0", day.Refusal("leg km=none").Instead, StringComparison.Ordinal);
        Assert.Contains("33.5", day.Refusal("check pressure").Instead, StringComparison.Ordinal);
        Assert.Contains("air=43", day.Refusal("weather").Instead, StringComparison.Ordinal);
        Assert.All(
            VerbTable.All.Where(verb => verb.OwnExample is not null),
            verb => Assert.Equal(verb.Example, verb.OwnExample!(ExampleNames.OfDocuments))
        );
    }
}
