using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>What the stop looks like, at three sizes of terminal.</summary>
public sealed class StopPageTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 50)]
    public void The_stop_looks_as_approved(int columns, int rows)
    {
        ADay day = new ADay(ARoute.Plan)
            .Ready()
            .Typed(
                "run 417",
                "5355",
                "7577",
                "; hollow ring after the second joint",
                "d",
                "6562 t van alongside",
                "699",
                "m",
                "6166",
                "732",
                "6971",
                "6367",
                "5861",
                "6569"
            )
            .Typed("correct 1.1 53-56", "flag 1.9 w gust at the bridge", "weather air=7 road=8 wind=2 gust=4 surface=dry");
        using Tui tui = new(day, columns, rows);
        tui.Keys("parked<Enter>");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/stop-{columns}x{rows}.txt", tui.Screen + "\n");
    }
}
