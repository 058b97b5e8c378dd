using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class LookTests
{
    [Theory]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-.,!?'/() ")]
    public void Every_sign_of_the_block_font_has_rows_of_one_width(string signs) =>
        Assert.All(
            signs,
            sign =>
            {
                string[]? dots = BlockFont.Dots($"{sign}");
                Assert.NotNull(dots);
                Assert.Equal(BlockFont.Height, dots.Length);
                Assert.Single(dots.Select(row => row.Length).Distinct());
            }
        );

    [Theory]
    [InlineData("Carrowedge", 120, 5, 5)]
    [InlineData("Carrowedge", 78, 5, 3)]
    [InlineData("Carrowedge", 30, 5, 1)]
    [InlineData("\u6f22\u5b57", 78, 5, 1)]
    public void A_name_takes_the_largest_form_that_fits(string name, int columns, int rows, int taken)
    {
        Assert.Equal(taken, LargeText.Of(name, columns, rows).Length);
        Assert.All(LargeText.Of(name, columns, rows), row => Assert.True(Columns.Of(row) <= columns));
    }

    [Fact]
    public void A_text_is_cut_between_whole_characters()
    {
        Assert.Equal("\u6f22\u2026", Columns.Cut("\u6f22\u5b57\u6f22", 4));
        Assert.Equal(4, Columns.Of(Columns.Left("\u6f22\u5b57\u6f22", 4)));
        Assert.Equal("cafe\u0301", Columns.Cut("cafe\u0301", 4));
    }

    [Theory]
    [InlineData("Station road")]
    [InlineData("\u6f22\u5b57 lane")]
    [InlineData("cafe\u0301 \u00b1 \u2026 \u2588")]
    [InlineData("\ud83d\ude97 \ud83c\uddeb\ud83c\uddee \ud83d\udc69\u200d\ud83d\udd27")]
    public void The_terminal_draws_a_text_in_as_many_columns_as_are_counted(string text) =>
        Assert.Equal(global::Terminal.Gui.Text.StringExtensions.GetColumns(text), Columns.Of(text));

    [Fact]
    public void A_name_in_wide_letters_is_wrapped_by_its_columns_on_a_screen_and_in_a_shell()
    {
        string name = string.Join(' ', Enumerable.Repeat("\u6f22\u5b57\u6f22\u5b57", 12));
        Assert.All(Wrapped.Lines(name, 20), line => Assert.InRange(Columns.Of(line), 1, 20));
        Assert.All(PlainLines.Wrapped("note: ", name), line => Assert.InRange(Columns.Of(line), 1, PlainLines.Width));
        Assert.Equal(
            name.Replace(" ", "", StringComparison.Ordinal),
            string.Concat(Wrapped.Lines(name, 20)).Replace(" ", "", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(0.0, -1.0, 1.0, "     \u251c\u2500\u2500\u2500\u2500\u25cf\u2500\u2500\u2500\u2500\u2524     ")]
    [InlineData(-1.5, null, null, "   \u25cf \u00b7\u00b7\u00b7\u00b7\u00b7\u2502\u00b7\u00b7\u00b7\u00b7\u00b7     ")]
    [InlineData(3.0, 1.0, 5.0, "     \u00b7\u00b7\u00b7\u00b7\u00b7\u2502\u00b7\u00b7\u00b7\u00b7\u251c\u2500\u2500\u2500\u2500>")]
    public void An_interval_is_drawn_against_zero_and_the_margin(double difference, double? low, double? high, string plot) =>
        Assert.Equal(plot, IntervalPlot.Of(new Estimate(difference, Lo95Db: low, Hi95Db: high), 1, 2, 21));

    [Fact]
    public void One_key_goes_through_day_night_and_no_colour()
    {
        using Tui tui = new(ARoute.ThirdRun());
        string day = tui.ColourAt(2, 2);
        string night = tui.Keys("<F12>").ColourAt(2, 2);
        string plain = tui.Keys("<F12>").ColourAt(2, 2);
        Assert.Equal(3, new[] { day, night, tui.Keys("<F12>").ColourAt(2, 2) == day ? plain + "#" : day }.Distinct().Count());
        Assert.Contains("Yellow", night, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void No_colour_is_honoured()
    {
        Assert.Same(Palette.Colourless, Palette.For("1"));
        Assert.Same(Palette.Day, Palette.For(""));
        Assert.Same(Palette.Day, Palette.For(null));
    }
}
