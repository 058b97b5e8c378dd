using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the blind review says.</summary>
internal static class ReviewingWords
{
    public const string StandardErrorDf = "standard error, df";
    public const string OfNoDifference = "p of no difference";
    public const string OfBeyondMargin = "p of beyond the margin";
    public const string CouldHaveShown = "could have shown (80 %)";
    public const string RunToRun = "run to run, reading SD";
    public const string DriftPerHour = "drift per hour";
    public const string MoreRunsCode = "more runs a code";
    public const string OfDrivenOrder = "p of the driven order";
    public const string LevelOfExposure = "level of exposure, d";
    public const string NotKnownYet = "not known yet";
    public const string AndBeginNextSessionWithCalibrationBefore = "; begin the next session with 'calibration before'";
    public const string CarAndTyreAreNotSeparated = "car and tyre are not separated: change the tyres between the cars on the next day";

    public static string StillToDrive(string codes, string first) => $"still to drive: {codes}{first}";

    public static string SessionIsVoid(int number, double? driftDb) => $"session {number} is void (meter drift {driftDb:+0.0#;-0.0#} dB): drive its brackets again on the next day, 'rerun bracket N WHY'";

    public static string BracketIsVoid(BracketCheck check) => $"bracket {check.Bracket.Number} is void: 'rerun bracket {check.Bracket.Number} WHY'";

    public static string AreLeast(int bracketsWanted) => $"{bracketsWanted} are the least";

    public static string StandsInAnotherDayInReverse(SpecCode code, int driven, string more, string wanted) => $"{code} stands in {driven} bracket{more}, {wanted}: another day in the reverse order would add to it";
}
