using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;

namespace FieldSession.Tests.Screens;

public sealed class RatePageTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_rating_page_asks_who_rates(int columns, int rows)
    {
        using Tui tui = new(
            AnEarDay.AtTheStop().Typed("trials 862 417 n=10 seg=2 which is louder", "rate Tam roar 6.25"),
            columns,
            rows,
            "rate"
        );
        Approve("who", columns, rows, tui.Keys("parked<Enter>"));
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_rating_page_asks_for_one_attribute_with_the_scale_beside_it(int columns, int rows)
    {
        using Tui tui = new(AnEarDay.AtTheStop(), columns, rows, "rate");
        Approve("attribute", columns, rows, tui.Keys("parked<Enter>2<Enter>6.25"));
    }

    [Theory]
    [InlineData("", "nothing has been driven")]
    [InlineData("run 417", "run 1 is on: ratings at a stop")]
    [InlineData("run 417,end", "417 brackets the others and is 7")]
    [InlineData("run 417,end,run 862,end,ratings closed", "the ratings of run 2 are closed")]
    public void The_rating_page_says_why_nothing_is_rated_now(string lines, string why)
    {
        ADay day = new ADay().Ready().Typed([.. lines.Split(',', StringSplitOptions.RemoveEmptyEntries)]);
        using Tui tui = new(day, screen: "rate");
        Assert.Contains(why, tui.Screen, StringComparison.Ordinal);
        Assert.Equal(day.Book.Lines.Count, day.Journal.Lines.Count);
    }

    private static void Approve(string page, int columns, int rows, Tui tui) =>
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/rate-{page}-{columns}x{rows}.txt", tui.Screen + "\n");
}
