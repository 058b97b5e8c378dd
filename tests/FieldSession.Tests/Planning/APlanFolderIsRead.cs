using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Planning;

namespace FieldSession.Tests.Planning;

public class APlanFolderIsRead
{
    [Fact]
    public void A_plan_of_two_lines_takes_its_name_from_the_folder_and_defaults_for_the_rest()
    {
        PlanReading reading = PlanFolder.Parse("specs = 2\norder = \"R 1 R 1 R\"", PlanTexts.Route, "spring-day");
        Plan plan = reading.Plan!;
        Assert.Equal("spring-day", plan.StudyName);
        Assert.Equal([0, 1, 0, 1, 0], plan.Order.Select(place => place.Index));
        Assert.Equal((1.0, 2.0, 94.0), (plan.MarginDb, plan.ImpactMarginDb, plan.CalibratorDb));
        Assert.Equal(UnitSystem.Metric, plan.Units);
        Assert.Equal(new Limits(), plan.Limits);
        Assert.Empty(plan.Crew);
        Assert.Empty(reading.Problems);
        Assert.Empty(reading.Warnings);
    }

    [Fact]
    public void Every_word_of_a_plan_arrives()
    {
        Plan plan = PlanTexts
            .WithPlan(
                """
                question = "Louder?"
                units = "imperial"
                margin_db = 0.5
                impact_margin_db = 3
                custodian = "Ilse"
                phrases = ["ring", "roar"]
                attributes = ["boom"]
                protocol = "all shut"
                calibrator_db = 114
                covered_until_evening = true
                price_premium = 96
                currency = "coins"
                set_life_km = 40000
                limits.wind_warn_m_s = 4
                [[crew]]
                name = "Ro"
                [[crew]]
                seat = "rear left"
                name = "Tam"
                """
            )
            .Plan!;
        Assert.Equal(
            ("Louder?", UnitSystem.Imperial, 0.5, 3.0, "Ilse"),
            (plan.Question, plan.Units, plan.MarginDb, plan.ImpactMarginDb, plan.Custodian)
        );
        Assert.Equal(
            ("all shut", 114.0, true, 96.0, "coins", 40000.0),
            (plan.Protocol, plan.CalibratorDb, plan.CoveredUntilEvening, plan.PricePremium, plan.Currency, plan.SetLifeKm)
        );
        Assert.Equal(["ring", "roar"], plan.Phrases);
        Assert.Equal(["boom"], plan.Attributes);
        Assert.Equal(4.0, plan.Limits.WindWarnMetresPerSecond);
        Assert.Equal([new CrewMember("Ro", "driver"), new CrewMember("Tam", "rear left")], plan.Crew);
    }

    [Theory]
    [InlineData("crew = [\"Ro\", \"Tam\", \"Una\"]", "Ro driver, Tam co-driver, Una passenger")]
    [InlineData("crew = [{name = \"Ro\"}, {name = \"Tam\", seat = \"driver\"}]", "Ro driver, Tam driver")]
    [InlineData("[crew]\nseat = \"co-driver\"\nname = \"Ro\"", "Ro co-driver")]
    [InlineData("crew = []", "")]
    [InlineData("crew = [\"Ro\", {name = \"Tam\"}]", "Ro driver, Tam co-driver")]
    public void A_crew_is_names_or_tables(string line, string crew) =>
        Assert.Equal(crew, string.Join(", ", PlanTexts.WithPlan(line).Plan!.Crew.Select(member => $"{member.Name} {member.Seat}")));

    [Fact]
    public void A_route_is_read_by_column_name_with_byte_order_mark_and_windows_line_ends()
    {
        Plan plan = PlanTexts
            .WithRoute(
                "\uFEFFLength_mi,Mood,segment,KIND,speed_mph,limit_mph,nominal_db,start_mark,phrase,class\r\n"
                    + "0.6,good,\"Parkway, west\",Smooth,45,50,61.5,third lamp,hum,\r\n\r\n"
                    + "0.5,bad,Cattle grid,grid,30,,,,,impact\r\n"
            )
            .Plan!;
        Segment parkway = plan.Route[0];
        Assert.Equal((1, "Parkway, west", "smooth", false), (parkway.Number, parkway.Name, parkway.Kind.Word, parkway.Kind.IsImpact));
        Assert.Equal(45, parkway.Speed.Mph, 9);
        Assert.Equal(50, parkway.Limit!.Value.Mph, 9);
        Assert.Equal(0.6, parkway.Length.Miles, 9);
        Assert.Equal((61.5, "third lamp", "hum"), (parkway.NominalDb, parkway.StartMark, parkway.Phrase));
        Segment grid = plan.Route[1];
        Assert.Equal((2, "grid", true), (grid.Number, grid.Kind.Word, grid.Kind.IsImpact));
        Assert.True(grid.Limit is null && grid.NominalDb is null && grid.StartMark is null && grid.Phrase is null);
        Assert.Equal(UnitSystem.Imperial, plan.Units);
    }

    [Fact]
    public void A_thousand_segments_are_a_route_and_one_more_is_not()
    {
        string route = "segment,kind,speed_kmh,length_m\n" + string.Concat(Enumerable.Range(1, 1000).Select(n => $"s{n},smooth,80,900\n"));
        Assert.Equal(1000, PlanTexts.WithRoute(route).Plan!.Route.Count);
        Assert.Contains("more than 1000", PlanTexts.OnlyProblem(PlanTexts.WithRoute(route + "s1001,smooth,80,900\n")).What);
    }
}
