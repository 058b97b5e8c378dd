using FieldSession.Terminal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class KeysPageTests
{
    [Fact]
    public void The_document_of_keys_is_printed_from_the_key_table() =>
        Golden.Approve("docs/keys.md", KeysPage.Document(KeyTable.Standard));

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
    public void Every_named_key_is_known_to_the_terminal() => Assert.All(
        KeyTable.Standard.Rows.SelectMany(row => row.Keys).Where(key => key.Length > 1),
        key => Assert.True(global::Terminal.Gui.Input.Key.TryParse(key, out _), key));

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
