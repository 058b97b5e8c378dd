using FieldSession.Terminal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class KeysPageTests
{
    [Fact]
    public void The_document_of_keys_is_printed_from_the_key_table() =>
        Golden.Approve("docs/keys.md", KeysPage.Document(KeyTable.Standard));

    [Fact]
    public void The_document_of_words_is_printed_from_the_table_of_words() => Golden.Approve("docs/words.md", WordsPage.Document());

    [Theory]
    [InlineData("drive", "seg 5")]
    [InlineData("stop", "rerun bracket 2 rain set in")]
    public void The_help_lists_the_words_that_can_be_typed_now(string screen, string example)
    {
        ADay day = screen == "drive" ? new ADay().Ready().Typed("run 417") : new ADay().Ready();
        using Tui tui = new(day, 120, 60, screen);
        string help = $"{tui.Keys("<F1>").Screen}\n{tui.Keys("<PageDown>").Screen}";
        Assert.Contains(example, help, StringComparison.Ordinal);
    }

    [Fact]
    public void No_key_means_two_things_on_one_screen()
    {
        foreach (ScreenRow screen in AllScreens.Rows)
        {
            string[] keys = [.. KeyTable.Standard.On(screen.Name).SelectMany(row => row.Keys)];
            Assert.Equal([], keys.GroupBy(key => key).Where(same => same.Count() > 1).Select(same => same.Key));
        }
    }

    [Fact]
    public void Every_named_key_is_known_to_the_terminal() =>
        Assert.All(
            KeyTable.Standard.Rows.SelectMany(row => row.Keys).Where(key => key.Length > 1),
            key => Assert.True(global::Terminal.Gui.Input.Key.TryParse(key, out _), key)
        );

    [Fact]
    public void The_help_says_why_a_key_is_barred()
    {
        using Tui tui = new(new ADay().Ready(), 120, 40);
        tui.Keys("?");
        Assert.Contains("not now: no run is on", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_footer_leaves_out_what_is_barred()
    {
        using Tui tui = new(new ADay());
        Assert.DoesNotContain("missed", tui.Rows[^1], StringComparison.Ordinal);
        Assert.Contains("help", tui.Rows[^1], StringComparison.Ordinal);
    }
}
