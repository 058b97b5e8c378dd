using System.Collections.Immutable;
using FieldSession.Terminal.Screens.Driving;
using FieldSession.Terminal.Screens.EnergyDriving;
using FieldSession.Terminal.Screens.Planning;
using FieldSession.Terminal.Screens.Predicting;
using FieldSession.Terminal.Screens.Rating;
using FieldSession.Terminal.Screens.Reporting;
using FieldSession.Terminal.Screens.Revealing;
using FieldSession.Terminal.Screens.Reviewing;

namespace FieldSession.Terminal;

/// <summary>
/// Contents page 4: how every screen of <see cref="ScreenName.InOrder"/> is made, in the same order.
/// </summary>
internal static class AllScreens
{
    /// <summary>Every screen.</summary>
    public static ImmutableArray<ScreenRow> Rows { get; } =
    [
        new(ScreenName.Drive, (desk, pen) => new DriveScreen(desk, pen)),
        new(ScreenName.Rate, (desk, pen) => new RateScreen(desk, pen)),
        new(ScreenName.Review, (desk, pen) => new ReviewScreen(desk, pen)),
        new(ScreenName.Predict, (desk, pen) => new PredictScreen(desk, pen)),
        new(ScreenName.Reveal, (desk, pen) => new RevealScreen(desk, pen)),
        new(ScreenName.Report, (desk, pen) => new ReportScreen(desk, pen)),
        new(ScreenName.Legs, (desk, pen) => new LegsScreen(desk, pen)),
        new(ScreenName.Plan, (desk, _) => new PlanScreen(desk)),
        new(ScreenName.Stop, (desk, pen) => new StopScreen(desk, pen)),
    ];
}

/// <summary>A screen on the contents page.</summary>
/// <param name="Name">The word by which keys, footer and commands call it.</param>
/// <param name="Make">Makes it.</param>
internal sealed record ScreenRow(string Name, Func<Desk, Pen, Screen> Make);
