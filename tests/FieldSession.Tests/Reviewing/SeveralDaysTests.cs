using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Reviewing;

/// <summary>Sessions on different days in one study: what differs between the days is said, and taken out.</summary>
public sealed class SeveralDaysTests
{
    private static Plan Plan =>
        ADay.ShortPlan with
        {
            Order = [.. "R 1 1 R 1 R R 1".Split(' ').Select(word => new Place(word == "R" ? 0 : 1))],
        };

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void A_day_that_is_louder_as_a_whole_changes_neither_the_difference_nor_its_interval(double louder)
    {
        Study study = TwoDays(louder);
        Estimate overall = BlindComparison.Of(StudyReadings.Of(study), StudyTerms.Of(study)).Comparisons[0].Classes.Steady!.Overall!;
        Study same = TwoDays(0);
        Estimate plain = BlindComparison.Of(StudyReadings.Of(same), StudyTerms.Of(same)).Comparisons[0].Classes.Steady!.Overall!;
        Assert.Equal(plain.DifferenceDb, overall.DifferenceDb, 9);
        Assert.Equal(plain.StandardErrorDb!.Value, overall.StandardErrorDb!.Value, 9);
        Assert.Equal(plain.Df!.Value, overall.Df!.Value, 9);
    }

    [Fact]
    public void What_differs_between_the_days_is_said_without_a_word_on_the_candidate()
    {
        string[] words = [.. SessionWords.Of(TwoDays(3))];
        Assert.Equal(3, words.Length);
        Assert.Equal("Session 1, 2026-02-03: 4 runs on 417, 862; air that day 6 to 6 degC; meter drift -0.1 dB.", words[0]);
        Assert.Equal(
            "Session 2, 2026-02-05: 4 runs on 417, 862; air that day 2 to 2 degC; meter drift 0.0 dB; the reference +2.9 dB "
                + "against its first session.",
            words[1]
        );
        Assert.Contains("a column in the run model", words[2]);
    }

    [Fact]
    public void A_study_of_one_session_says_nothing_of_sessions() =>
        Assert.Empty(SessionWords.Of(new ADay().Ready().Typed("run 417", "5860").Study));

    private static Study TwoDays(double louder)
    {
        ADay day = new(Plan);
        day.Typed("calibration before 94.0", "weather air=6 surface=dry");
        Drive(day, 0, [417, 862, 862, 417]);
        day.Typed("calibration after 93.9");
        day.Clock.Advance(TimeSpan.FromDays(2));
        day.Typed("calibration before 94.0", "weather air=2 surface=dry");
        Drive(day, louder, [862, 417, 417, 862]);
        return day.Typed("calibration after 94.0").Study;
    }

    private static void Drive(ADay day, double louder, int[] codes)
    {
        foreach ((int i, int code) in codes.Index())
        {
            double more = louder + (code == 862 ? 1 : 0) + (i % 2 * 0.2) + (i == 3 ? 0.1 : 0);
            string Range(double level) =>
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{level + more:0.0}-{level + more + 2:0.0}");
            day.Typed($"run {code}", Range(58), Range(63));
            day.Clock.Advance(TimeSpan.FromMinutes(20));
            day.Typed(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{71 + more:0.0}"));
        }
    }
}
