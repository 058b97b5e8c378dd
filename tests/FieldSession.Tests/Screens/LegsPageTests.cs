using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class LegsPageTests
{
    private static ADay Planned() =>
        new(
            ARoute.Plan with
            {
                EnergyTold = new EnergyPlan
                {
                    Usable = Energy.Of(75, EnergyUnit.KilowattHour),
                    Days =
                    [
                        new([new("X", new Place(0)), new("Y", new Place(1))]),
                        new([new("X", new Place(0)), new("Y", new Place(1))]),
                        new([new("X", new Place(1)), new("Y", new Place(0))]),
                        new([new("X", new Place(1)), new("Y", new Place(0))]),
                    ],
                },
            }
        );

    /// <summary>Three legs of the first day, made up.</summary>
    private static ADay AtAStop() =>
        Planned()
            .Typed(
                "leg day=1 car=X code=417 km=104.0 kwh=18.8 t0=5 t1=6.5 wind=2 kmh=88 at=09:30 driver=Ro",
                "leg day=1 car=Y code=862 km=104.0 kwh=1.93 t0=5 at=09:30 driver=Una",
                "leg day=1 car=X code=417 km=96.0 kwh=17.0 at=11:40 driver=Ro w shower"
            );

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_legs_screen_looks_as_approved(int columns, int rows)
    {
        using Tui tui = new(AtAStop(), columns, rows, "legs");
        tui.Keys("<Enter><Enter><Enter><Enter>96.0<Enter>17.");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/legs-{columns}x{rows}.txt", tui.Screen + "\n");
    }

    [Fact]
    public void No_difference_of_codes_is_on_the_legs_screen()
    {
        ADay day = AtAStop().Typed("u", "leg day=1 car=X code=417 km=96.0 kwh=17.0", "leg day=1 car=Y code=862 km=96.0 kwh=17.7");
        using Tui tui = new(day, 120, 40, "legs");
        Assert.DoesNotContain("%", tui.Screen.Replace("80-31", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
