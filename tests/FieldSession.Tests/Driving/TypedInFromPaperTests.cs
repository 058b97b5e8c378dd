using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

/// <summary>A day that was logged on paper after a dead battery is typed in afterwards, in order and with its times.</summary>
public sealed class TypedInFromPaperTests
{
    // the stopped clock begins at 9:00 UTC; the paper is typed in at 12
    private static ADay AtNoon()
    {
        ADay day = new ADay().Ready();
        day.Clock.Advance(TimeSpan.FromHours(3));
        return day;
    }

    private static DateTimeOffset At(int hour, int minute) => new(2026, 2, 3, hour, minute, 0, TimeSpan.Zero);

    [Fact]
    public void Lines_are_at_the_time_of_the_paper_and_are_marked()
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", "at=9:11 5860", "at=9:12 6365", "at=9:13 714");
        Assert.Equal([At(9, 11), At(9, 12), At(9, 13)], day.Study.Runs[0].Readings.Select(r => r.Mark.At));
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.True(reading.Mark.IsTypedLater));
        Assert.Equal(At(9, 10), day.Study.Runs[0].Started.At);
        Assert.Equal(At(12, 0), day.Book.Lines[^1].At);
        Assert.Contains("typed later, 2026-02-03 09:13", day.Book.LastFacts[^1].Echo.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at=9:11 5860 t lorry", true)]
    [InlineData("at=9:11 spot 5860 t lorry", false)]
    public void A_flag_counts_as_given_on_the_spot_only_if_the_paper_says_so(string line, bool isLate)
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", line);
        Assert.Equal(isLate, day.Study.RunOn?.LastReading?.Spoilt?.Late);
    }

    [Fact]
    public void A_letter_behind_a_reading_from_paper_is_late_without_the_word()
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", "at=9:11 5860", "at=9:11 t");
        Assert.True(day.Study.RunOn?.LastReading?.Spoilt?.Late);
        day.Typed("u", "at=9:11 spot t");
        Assert.False(day.Study.RunOn?.LastReading?.Spoilt?.Late);
        day.Typed("u", "t");
        Assert.True(day.Study.RunOn?.LastReading?.Spoilt?.Late);
    }

    [Theory]
    [InlineData("at=9:05 5860", "is before the last act")]
    [InlineData("at=2026-02-03T12:30 5860", "is in the future")]
    [InlineData("at=25:10 5860", "not understood")]
    [InlineData("at=9:11", "not understood")]
    [InlineData("at=9:11 spot 5860", "'spot' belongs to a flag")]
    [InlineData("at=9:11 u", "never on paper")]
    public void A_time_that_cannot_be_is_refused_and_changes_nothing(string line, string why) =>
        Assert.Contains(why, AtNoon().Typed("at=9:10 run 417").Refusal(line).Why, StringComparison.Ordinal);

    [Fact]
    public void A_mistyped_time_is_taken_back_and_the_right_one_taken()
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", "at=11:11 5860", "u", "at=9:11 5860");
        Assert.Equal(At(9, 11), day.Study.RunOn?.LastReading?.Mark.At);
    }

    [Fact]
    public void It_is_the_same_study_when_the_journal_is_read_again()
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", "at=9:11 spot 5860 t", "at=9:12 6365");
        Study again = Logbook.Fold(day.Book.Lines);
        Assert.Equal(day.Study.Runs[0].Readings, again.Runs[0].Readings);
    }

    [Fact]
    public void The_report_says_how_many_and_what_became_of_their_flags()
    {
        ADay day = AtNoon().Typed("at=9:10 run 417", "at=9:11 spot 5860 t", "at=9:12 6365 w", "at=9:13 714");
        string said = ReportingWordsOf(day.Study);
        Assert.Contains(
            "3 of 3 readings were logged on paper and typed in later. Of their flags 1 count as given on the spot",
            said,
            StringComparison.Ordinal
        );
        Assert.Contains("1 count as late", said, StringComparison.Ordinal);
    }

    private static string ReportingWordsOf(Study study) =>
        string.Join(
            '\n',
            DayReport
                .Of(study, null, new Provenance(1, "", ""))
                .Sections.SelectMany(section => section.Blocks)
                .OfType<Points>()
                .SelectMany(points => points.Items)
        );
}
