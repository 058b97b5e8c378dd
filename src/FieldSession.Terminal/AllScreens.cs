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
/// Contents page 4: every screen in the order of the day, then the plan, which is made before it, and the stop, which the word
/// "parked" opens from the drive screen. The first is called by F2 or Alt+2, the next by F3 or Alt+3, and so on; the tenth by F10 or Alt+0.
/// </summary>
internal static class AllScreens
{
    /// <summary>Every screen.</summary>
    public static ImmutableArray<ScreenRow> Rows { get; } =
    [
        new(KeyTable.Drive, ShellWords.DriveScreenIs, (desk, pen) => new DriveScreen(desk, pen)),
        new(KeyTable.Rate, ShellWords.RateScreenIs, (desk, pen) => new RateScreen(desk, pen)),
        new(KeyTable.Review, ShellWords.ReviewScreenIs, (desk, pen) => new ReviewScreen(desk, pen)),
        new(KeyTable.Predict, ShellWords.PredictScreenIs, (desk, pen) => new PredictScreen(desk, pen)),
        new(KeyTable.Reveal, ShellWords.RevealScreenIs, (desk, pen) => new RevealScreen(desk, pen)),
        new(KeyTable.Report, ShellWords.ReportScreenIs, (desk, pen) => new ReportScreen(desk, pen)),
        new(KeyTable.Legs, ShellWords.LegsScreenIs, (desk, pen) => new LegsScreen(desk, pen)),
        new(KeyTable.Plan, ShellWords.PlanScreenIs, (desk, _) => new PlanScreen(desk)),
        new(KeyTable.Stop, ShellWords.StopScreenIs, (desk, pen) => new StopScreen(desk, pen)),
    ];
}

/// <summary>A screen on the contents page.</summary>
/// <param name="Name">The word by which keys, footer and commands call it.</param>
/// <param name="Words">What is done on it.</param>
/// <param name="Make">Makes it.</param>
internal sealed record ScreenRow(string Name, string Words, Func<Desk, Pen, Screen> Make);
