using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>On 80 columns, with the longest values that the demo's day has, what somebody has to act on is there to its end.</summary>
public class NothingThatMattersIsCutTests
{
    private const string Cut = "…";

    // A list of last acts is looked at for what was done; the act is whole on the stop's page and in the journal.
    private const int FirstRowOfActs = 18;

    [Fact]
    public void A_doubtful_and_spoilt_reading_shows_its_whole_doubt_and_the_next_segment_its_start_mark()
    {
        using ADemoDay day = new ADemoDay().TypedToTheLastRun();
        using Tui tui = day.Screens();
        tui.Keys("<Enter>5457<Enter>6470t<Enter>");
        Assert.Contains("from where the chippings begin", tui.Screen, StringComparison.Ordinal);
        tui.Keys("6365<Enter>697<Enter>6486<Enter>");
        TheHouse.NoneOf(
            tui.Rows.Take(FirstRowOfActs).Where(row => row.Contains(Cut, StringComparison.Ordinal)),
            "what is on the drive screen is there to its end"
        );
        Assert.Contains("wide: traffic?", tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drive", "")]
    [InlineData("review", "parked<Enter>")]
    [InlineData("predict", "parked<Enter>")]
    [InlineData("predict", "parked<Enter>1<Enter>2<Enter>4<Enter>")]
    [InlineData("report", "parked<Enter>")]
    [InlineData("legs", "parked<Enter>")]
    [InlineData("rate", "parked<Enter>")]
    public void A_screen_of_the_evening_shows_every_sentence_to_its_end(string screen, string keys)
    {
        using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt");
        using Tui tui = day.Screens(screen: screen);
        TheHouse.NoneOf(tui.Keys(keys).Rows.Where(row => row.Contains(Cut, StringComparison.Ordinal)), "a sentence is shown to its end");
    }
}
