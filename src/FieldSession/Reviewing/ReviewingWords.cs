using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the blind review says.</summary>
internal static class ReviewingWords
{
    // Rows of figures
    public const string FromRecordings = "from recordings";
    public const string StandardErrorAndFreedom = "standard error, df";
    public const string ProbabilityIfNoDifference = "p if no true difference";
    public const string ProbabilityIfBeyondMargin = "p if beyond the margin";
    public const string CouldHaveShown = "could have shown, dB";
    public const string ProbabilityAmongAll = "p for all candidates";
    public const string RunAndReadingSpread = "run to run, reading SD";
    public const string DriftPerHour = "drift per hour";
    public const string MoreRunsPerCode = "more runs a code";
    public const string NoMoreRunsNeeded = "none, it is settled";
    public const string NoMoreDaysNeeded = "none, it is settled";
    public const string ProbabilityOfDrivenOrder = "p over all orders";
    public const string LevelOfExposure = "level of exposure, d";
    public const string NotKnownYet = "not known yet";
    public const string NoUsableInterval = "no usable interval";

    // Lines beyond the plan's question
    public const string ExploredWithoutWord = "explored: the plan asked its question elsewhere, so this has no verdict";

    public const string LouderThanTheRest =
        "Louder than expected from their run and segment (look at the note; that alone is no reason to leave a reading out)";

    // What the word hangs on
    public const string FewReadings = "1 to 3 readings, no ";
    public const string NoReadings = "";
    public const string LeftOut = "left out";
    public const string PutBack = "put back";
    public const string SpoiltPutBack = "spoilt readings put back";
    public const string DriftColumnSwitched = "the drift column switched";
    public const string TooLittleForWord = "too little left for a verdict";
    public const string HardlyAnySuchDay = "hardly any day of this design";
    public const string AlmostEverySuchDay = "almost every day of this design";

    public static string TenthsOfSuchDays(string tenths) => $"about {tenths} in 10 days of this design";

    public static string ChangeTurnsWord(string change, string verdict, string often) =>
        $"with {change} it says '{verdict}'; by chance alone {often} would hang on so little";

    public static string TurnedToo(string single, int more) =>
        $". The same with {single}{(more == 0 ? "" : $", and with {more} other single change{(more == 1 ? "" : "s")}")}";

    public static string NoSmallChangeTurnsWord(string readings) => $"no {readings}run and no segment changes it when left out";

    public static string ReadingsLeftOut(int readings, string places) =>
        $"{readings} more {(readings == 1 ? "reading" : "readings")} left out ({places})";

    public static string ReadingsPutBack(int readings, string places) =>
        $"{readings} spoilt {(readings == 1 ? "reading" : "readings")} put back ({places})";

    public static string FlagsChanged(int flags, string places) => $"{flags} flags changed ({places})";

    public static string RunLeftOut(int run) => $"run {run} left out";

    public static string SegmentLeftOut(string segment) => $"{segment} left out";

    public static string AnyOfChanges(int changes) => $"any of {changes} changes";

    public static string SomeOfChanges(int changes) => $"{changes} of them";

    // Forced choices
    public const string WithMeterSeen = "with the meter seen";
    public const string WithOrderSeen = "with the order seen";
    public const string NobodyChoseUnseen = "nobody chose unseen";
    public const string OnlyUnseenCount = "only choices made with the meter unseen can carry a word";

    public static string ShareAtLeast(string low) => $"share {low} or more, 95 % limit";

    public static string ShareBetween(string low, string high) => $"share {low} to {high}, 95 % interval";

    // Ratings
    public static string RatedAgainstFixedScore(string reference, string points) =>
        $"{reference} is not rated: it is {points} by agreement. So 'rated lower' means below {points}, not lower than {reference} sounded";

    public static string TooFewRatings(string? attributes) =>
        attributes is null
            ? $"{EarRemarkWords.TooFewForTest}: so few ratings only describe; they show nothing"
            : $"{EarRemarkWords.TooFewForTest} of {attributes}: so few ratings only describe; they show nothing";

    public static string HolmOverRatings(int tests) => $"p Holm allows for {tests} {(tests == 1 ? "test" : "tests")} of ratings at once";

    // Looks
    public const string Unfinished =
        "UNFINISHED: planned runs are still open. Intervals may still move; p and verdict come at the plan's end.";

    public static string Lengthened(int times) =>
        $"The order was lengthened {times} time{(times == 1 ? "" : "s")} after a comparison could be seen: words need more now.";

    public const string ChosenAfterTheData =
        "CHOSEN AFTER THE DATA: the question was amended after a comparison could be seen. The verdict stays with the "
        + "question before; the amended one would say:";

    // What is still missing
    public const string BeginWithCalibrationBefore = "; begin the next session with 'calibration before'";
    public const string CarAndTyreAreNotSeparated = "car and tyre are not separated: change the tyres between the cars on the next day";

    public static string AndReplaced(int readings) => readings == 0 ? "" : $", {readings} of runs that were driven again";

    public static string StillToDrive(string codes, string calibrationFirst) => $"still to drive: {codes}{calibrationFirst}";

    public static string SessionIsVoid(int number, double? driftDb) =>
        $"session {number} is void (meter drift {driftDb:+0.0#;-0.0#} dB): drive its brackets again on the next day, 'rerun bracket N WHY'";

    public static string BracketIsVoid(BracketCheck check) =>
        $"bracket {check.Bracket.Number} is void: 'rerun bracket {check.Bracket.Number} WHY'";

    public static string BracketsForAFirmResult(int brackets) => $"{brackets} are needed for a firm result";

    public static string LeastBrackets(int brackets) => $"{brackets} are the least";

    public static string AnotherDayInReverse(SpecCode code, int brackets, string plural, string wanted) =>
        $"{code} has {brackets} bracket{plural}; {wanted}. Drive another day in reverse order.";
}
