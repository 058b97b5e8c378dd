using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>What flags say, and why one can't be set or taken back.</summary>
internal static class FlaggingWords
{
    public const string FlagTakenBack = "flag taken back";
    public const string TypeFlagWordsForRun = "type 'flag 2.5 t words' for run 2, segment 5; the causes are t w s r n e";
    public const string ThereIsNoReadingToFlag = "there is no reading to flag";
    public const string TypeReadingFirst = "type the reading first, then the letter";
    public const string FlagNamesRun = "a flag names run, segment and cause";
    public const string FlagLastReading = "flag the last reading, or one by run and segment: 'flag 2.5 t words'";
    public const string AndFlaggedLateUsedInSensitivityResult = ", flagged late: used in the sensitivity result only";

    public static string IsCleanAgain(string inWords) => $"{inWords} is clean again";

    public static string ThereIsNoReading(string[] words) => $"there is no reading {words[1]}";

    public static string LineIsNoReading(LineName line) => $"line {line.Line} is no reading";

    public static string DbOnRun((Run Run, Reading Reading) found, string name) => $"{found.Reading.Levels} dB on {found.Reading.Segment} {name}, run {found.Run.Number}";
}
