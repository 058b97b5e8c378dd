using System.Collections.Immutable;

namespace FieldSession.Terminal;

/// <summary>The word by which keys, footer and commands call a screen.</summary>
internal static class ScreenName
{
    /// <summary>The name under which rows work on every screen.</summary>
    public const string Everywhere = "";

    /// <summary>The drive screen's name.</summary>
    public const string Drive = "drive";

    /// <summary>The name of the screen on which a run is read back and repaired at a stop.</summary>
    public const string Stop = "stop";

    /// <summary>The rating screen's name.</summary>
    public const string Rate = "rate";

    /// <summary>The review screen's name.</summary>
    public const string Review = "review";

    /// <summary>The name of the screen on which predictions are locked.</summary>
    public const string Predict = "predict";

    /// <summary>The name of the screen on which the key is opened.</summary>
    public const string Reveal = "reveal";

    /// <summary>The report screen's name.</summary>
    public const string Report = "report";

    /// <summary>The name of the screen that comes before any study.</summary>
    public const string Start = "start";

    /// <summary>The name of the screen for the legs of energy days.</summary>
    public const string Legs = "legs";

    /// <summary>The plan screen's name.</summary>
    public const string Plan = "plan";

    /// <summary>
    /// Every screen of a study in the order of the day, then the plan, which is made before it, and the stop, which the word "parked" opens
    /// from the drive screen; with what is done on it. The first is called by F2 or Alt+2, the next by F3 or Alt+3, and so on; the tenth by
    /// F10 or Alt+0.
    /// </summary>
    public static ImmutableArray<(string Name, string Words)> InOrder { get; } =
    [
        (Drive, ShellWords.DriveScreenIs),
        (Rate, ShellWords.RateScreenIs),
        (Review, ShellWords.ReviewScreenIs),
        (Predict, ShellWords.PredictScreenIs),
        (Reveal, ShellWords.RevealScreenIs),
        (Report, ShellWords.ReportScreenIs),
        (Legs, ShellWords.LegsScreenIs),
        (Plan, ShellWords.PlanScreenIs),
        (Stop, ShellWords.StopScreenIs),
    ];
}
