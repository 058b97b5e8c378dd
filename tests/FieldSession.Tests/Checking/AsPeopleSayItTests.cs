using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Checking;

/// <summary>Weather and calibration typed as people say them; the strict forms mean the same.</summary>
public sealed class AsPeopleSayItTests
{
    [Theory]
    [InlineData("weather air 8 road 7 wind 2 gusts 4 dry")]
    [InlineData("weather air=8 road=7 wind=2 gust=4 surface=dry")]
    [InlineData("air=8 road=7 wind=2 gust=4 surface=dry")]
    [InlineData("air 8 road 7 wind 2 gust 4 dry")]
    [InlineData("Weather Air 8,0 road=7 wind 2 gust 4 surface dry")]
    public void The_same_weather_in_other_words(string typed)
    {
        Weather weather = new ADay().Typed(typed).Study.Weather[^1];
        Assert.Equal(
            (8, 7, 2, 4, "dry"),
            (
                weather.Air!.Value.Celsius,
                weather.Road!.Value.Celsius,
                weather.Wind!.Value.MetresPerSecond,
                weather.Gust!.Value.MetresPerSecond,
                weather.Surface
            )
        );
    }

    [Theory]
    [InlineData("air=8")]
    [InlineData("air 8")]
    public void A_single_part_is_weather_too(string typed) => Assert.Null(new ADay().Typed(typed).Study.Weather[^1].Road);

    [Theory]
    [InlineData("weather air", "weather")]
    [InlineData("weather nice", "weather")]
    [InlineData("air=warm", "number")]
    public void Other_words_are_refused(string typed, string why) =>
        Assert.Contains(why, new ADay().Refusal(typed).ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_calibration_without_before_or_after_is_what_is_due_and_in_the_middle_it_is_asked()
    {
        ADay day = new ADay().Typed("calibration 94.0");
        Assert.Equal(94.0, day.Study.SessionOn?.Before?.LevelDb);
        day.Typed("run 417", "5860", "6365", "714");
        Assert.Contains("before", day.Refusal("calibration 94.0").ToString(), StringComparison.Ordinal);
        day.Typed("run 862", "5860", "6365", "714", "run 417", "5860", "6365", "714", "calibration 93.9");
        Assert.Equal(93.9, day.Study.LastSession?.After?.LevelDb);
    }
}
