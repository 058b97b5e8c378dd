using System.Collections.Immutable;
using FieldSession.Terminal.Screens.Driving;
using FieldSession.Terminal.Screens.EnergyDriving;

namespace FieldSession.Terminal;

/// <summary>
/// Contents page 4: every screen in the order of the job. The first is called by F2 or Alt+2, the next by F3 or Alt+3,
/// and so on.
/// </summary>
internal static class AllScreens
{
    /// <summary>Every screen.</summary>
    public static ImmutableArray<ScreenRow> Rows { get; } =
    [
        new("drive", "readings, flags and notes while the car is driven", (desk, pen) => new DriveScreen(desk, pen)),
        new("legs", "the legs of an energy day, typed at a charging stop", (desk, pen) => new LegsScreen(desk, pen)),
    ];
}

/// <summary>A screen on the contents page.</summary>
/// <param name="Name">The word by which keys, footer and commands call it.</param>
/// <param name="Words">What is done on it.</param>
/// <param name="Make">Makes it.</param>
internal sealed record ScreenRow(string Name, string Words, Func<Desk, Pen, Screen> Make);
