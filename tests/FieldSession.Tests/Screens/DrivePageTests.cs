using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class DrivePageTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 50)]
    public void The_drive_screen_on_the_road_looks_as_approved(int columns, int rows)
    {
        using Tui tui = new(ARoute.ThirdRun(), columns, rows);
        tui.Keys("704 ");
        Approve("road", columns, rows, tui);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 50)]
    public void The_drive_screen_at_a_stop_looks_as_approved(int columns, int rows)
    {
        using Tui tui = new(ARoute.Driven(), columns, rows);
        Approve("stop", columns, rows, tui);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_help_looks_as_approved(int columns, int rows)
    {
        using Tui tui = new(ARoute.ThirdRun(), columns, rows);
        tui.Keys("<F1>");
        Approve("help", columns, rows, tui);
    }

    [Fact]
    public void Before_the_first_run_it_says_what_is_missing()
    {
        using Tui tui = new(new ADay());
        Assert.Contains("calibration before 94.0", tui.Screen, StringComparison.Ordinal);
        tui.Keys(":calibration before 94.0<Enter>:weather air=6 surface=dry<Enter>");
        Assert.Contains("starts run 1 on 417 and confirms: windows and vents shut", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void After_the_last_run_it_says_what_to_do_before_the_evening()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "5860", "6365", "714", "run 862", "5860", "6365", "714", "run 417", "5860", "6365", "714");
        using Tui tui = new(day);
        Assert.Contains("calibration after", tui.Screen, StringComparison.Ordinal);
        tui.Keys(":calibration after 93.9<Enter>");
        Assert.Contains("F4     the order is driven and the meter checked: go to the blind review", tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(59, 20)]
    [InlineData(40, 10)]
    [InlineData(20, 5)]
    public void On_a_terminal_that_is_too_small_readings_are_still_taken(int columns, int rows)
    {
        ADay day = ARoute.ThirdRun();
        using Tui tui = new(day, columns, rows);
        Assert.Contains("60x20", tui.Screen, StringComparison.Ordinal);
        tui.Keys("704<Enter>");
        Assert.Equal(4, day.Study.Runs[2].Readings.Count());
        Assert.Contains("5 Ferrowdyke", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resize_at_any_moment_keeps_what_is_in_the_box()
    {
        using Tui tui = new(ARoute.ThirdRun());
        tui.Keys("70").Resize(120, 40).Keys("4").Resize(60, 20);
        Assert.Equal("704", tui.Box);
    }

    [Fact]
    public void Wide_and_combining_characters_in_names_keep_the_columns_aligned()
    {
        Plan plan = ADay.ShortPlan;
        plan = plan with
        {
            Route = plan
                .Route.SetItem(0, ADay.ASegment(1, "\u6f22\u5b57 lane", "smooth"))
                .SetItem(1, ADay.ASegment(2, "cafe\u0301 road", "smooth")),
        };
        using Tui tui = new(new ADay(plan).Ready().Typed("run 417", "5860", "6365"), 120, 40);
        string[] named =
        [
            .. tui.Rows.Where(row => row.Contains("lane  ", StringComparison.Ordinal) || row.Contains("road  ", StringComparison.Ordinal)),
        ];
        string[] table = [.. named.Where(row => row.Contains("417", StringComparison.Ordinal))];
        Assert.Equal(2, table.Length);
        Assert.Single(table.Select(row => Columns.Of(row[..row.LastIndexOf("417", StringComparison.Ordinal)])).Distinct());
    }

    private static void Approve(string page, int columns, int rows, Tui tui) =>
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/drive-{page}-{columns}x{rows}.txt", tui.Screen + "\n");
}
