using FieldSession.Terminal;
using FieldSession.Terminal.Starting;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>The look, the cover and the size of the terminal are each user's own and remembered.</summary>
public sealed class UsersSightTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-sight").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void What_was_chosen_on_the_screen_is_there_the_next_day()
    {
        SightFile file = new(_folder);
        ADay day = ARoute.ThirdRun();
        using (Tui tui = new(day.Book, day.Clock, desk => desk with { Sight = file.Sight, RememberSight = file.Remember }, 120, 40))
        {
            tui.Keys("<F12><F11>");
        }

        Assert.Equal(new UsersSight("night", IsCovered: true, 120, 40), file.Sight);
    }

    [Fact]
    public void The_comparison_is_covered_and_uncovered_by_a_key_and_what_the_plan_covers_stays_so()
    {
        ADay day = ARoute.ThirdRun();
        using Tui tui = new(day.Book, day.Clock, desk => desk with { Cover = new Cover(isOn: true) }, 120, 40);
        Assert.Contains("covered by F11", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("+1.5", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("+1.5", tui.Keys("<F11>").Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("look = night\ncovered = maybe\nsize = 0x9\nnonsense", "night", false, null)]
    [InlineData("size=200x50\ncovered=yes", null, true, 200)]
    [InlineData("", null, false, null)]
    public void A_line_that_tells_nothing_is_passed_over(string text, string? look, bool isCovered, int? columns)
    {
        UsersSight sight = UsersSight.Of(text.Split('\n'));
        Assert.Equal((look, isCovered, columns), (sight.Look, sight.IsCovered, sight.Columns));
        Assert.Equal(sight, UsersSight.Of(sight.Lines) with { Rows = sight.Rows });
    }
}
