using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Predicting;

public sealed class WhoeverHasTwoFirstNamesPredicts
{
    private static ADay Driven() =>
        new ADay(ADay.ShortPlan with { Crew = [new CrewMember("Mary Ann", CrewMember.DriverSeat)] })
            .Ready()
            .Typed("run 417", "5860", "6365", "714", "run 862", "5860", "6365", "714", "run 417", "5860", "6365", "714")
            .Typed("calibration after 94.0");

    [Theory]
    [InlineData("predict Mary Ann feature=862 sure=3 because=sound grit on the coarse road", "grit on the coarse road")]
    [InlineData("predict Mary Ann feature=862 sure=3", null)]
    public void By_their_whole_name(string typed, string? words)
    {
        Prediction locked = Assert.Single(Driven().Typed(typed).Study.Predictions);
        Assert.Equal(("Mary Ann", "862", words), (locked.Person, locked.Feature.Digits, locked.Words));
    }

    [Fact]
    public void By_the_first_one_where_nobody_else_has_it() =>
        Assert.Equal("Mary Ann", Assert.Single(Driven().Typed("predict Mary feature=862 sure=3").Study.Predictions).Person);

    [Theory]
    [InlineData("Mar")]
    [InlineData("Ann")]
    public void A_part_of_a_name_is_nobody_of_the_crew(string part) =>
        Assert.Contains("Mary Ann", Driven().Refusal($"predict {part} feature=862 sure=3").ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_first_name_of_two_people_means_neither() =>
        Assert.Null(CrewMember.Meant([new("Jon Bo", "driver"), new("Jon Ek", "co-driver")], "Jon"));
}
