using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the blind review says.</summary>
internal static class ReviewingWords
{
    // Rows of figures
    public const string StandardErrorAndFreedom = "standard error, df";
    public const string ProbabilityOfNoDifference = "p of no difference";
    public const string ProbabilityBeyondMargin = "p of beyond the margin";
    public const string CouldHaveShown = "could have shown (80 %)";
    public const string RunAndReadingSpread = "run to run, reading SD";
    public const string DriftPerHour = "drift per hour";
    public const string MoreRunsPerCode = "more runs a code";
    public const string ProbabilityOfDrivenOrder = "p of the driven order";
    public const string LevelOfExposure = "level of exposure, d";
    public const string NotKnownYet = "not known yet";
    public const string NoUsableInterval = "no usable interval";

    // Lines beyond the plan's question
    public const string ExploredWithoutWord = "explored: the plan asked its question elsewhere, so no verdict stands here";

    // What is still missing
    public const string BeginWithCalibrationBefore = "; begin the next session with 'calibration before'";
    public const string CarAndTyreAreNotSeparated = "car and tyre are not separated: change the tyres between the cars on the next day";

    public static string StillToDrive(string codes, string calibrationFirst) => $"still to drive: {codes}{calibrationFirst}";

    public static string SessionIsVoid(int number, double? driftDb) => $"session {number} is void (meter drift {driftDb:+0.0#;-0.0#} dB): drive its brackets again on the next day, 'rerun bracket N WHY'";

    public static string BracketIsVoid(BracketCheck check) => $"bracket {check.Bracket.Number} is void: 'rerun bracket {check.Bracket.Number} WHY'";

    public static string LeastBrackets(int brackets) => $"{brackets} are the least";

    public static string AnotherDayInReverse(SpecCode code, int brackets, string plural, string wanted) => $"{code} stands in {brackets} bracket{plural}, {wanted}: another day in the reverse order would add to it";
}
