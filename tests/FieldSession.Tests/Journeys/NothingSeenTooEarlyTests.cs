using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>No earlier value of a segment may be seen before its reading in the present run is stored.</summary>
public sealed class NothingSeenTooEarlyTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_segment_shows_earlier_values_only_once_it_is_read_in_this_run(int columns, int rows)
    {
        using Tui tui = new(ADayWithOddLevels(), columns, rows);
        tui.Keys("<Enter>");
        Assert.DoesNotContain("51.3", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("covered until read", tui.Screen, StringComparison.Ordinal);
        tui.Keys("5255<Enter>");
        Assert.Contains("51.3-54.2", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("62.3", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Undoing_a_reading_covers_its_segment_again()
    {
        using Tui tui = new(ADayWithOddLevels());
        Assert.DoesNotContain("51.3", tui.Keys("<Enter>5255<Enter>u").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missed_segment_stays_covered()
    {
        using Tui tui = new(ADayWithOddLevels());
        Assert.DoesNotContain("51.3", tui.Keys("<Enter>m").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_can_keep_all_covered_until_the_evening()
    {
        using Tui tui = new(ADayWithOddLevels(ADay.ShortPlan with { CoveredUntilEvening = true }));
        tui.Keys("<Enter>5255<Enter>");
        Assert.Contains("covered until the evening", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("51.3", tui.Screen, StringComparison.Ordinal);
    }

    private static ADay ADayWithOddLevels(Plan? plan = null) => new ADay(plan).Ready().Typed("run 417", "51.3-54.2", "62.3-65.1", "71.7");
}
