using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>What flags say, and why one can't be set or taken back.</summary>
internal static class FlaggingWords
{
    public const string FlagTakenBack = "flag taken back";
    public const string FlagForm = "type 'flag 2.5 t words' for run 2, segment 5; the causes are t w s r n e";
    public const string ThereIsNoReadingToFlag = "there is no reading to flag";
    public const string ReadingBeforeLetter = "type the reading first, then the letter";
    public const string FlagNamesReadingAndCause = "a flag names run, segment and cause";
    public const string FlagOtherReading = "flag the last reading, or one by run and segment: 'flag 2.5 t words'";
    public const string FlaggedLate = ", flagged late: used in the sensitivity result only";

    public static string FlagIsThatAlready(SpoiltCause cause) => $"the reading is flagged {cause.Word()} already, in the same words";

    public static string FlagAgainTakesBack(SpoiltCause cause) => $"type other words, or '{cause.Letter()}' alone to take the flag back";

    public static string ReadingIsCleanAgain(string reading) => $"{reading} is clean again";

    public static string ThereIsNoReading(string place) => $"there is no reading {place}";

    public static string LineIsNoReading(LineName line) => $"line {line.Line} is not a reading";

    public static string ReadingOnSegment(Run run, Reading reading, string segment) =>
        $"{reading.Levels} dB on {reading.Segment} {segment}, run {run.Number}";
}
