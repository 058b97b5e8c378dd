namespace FieldSession.Terminal.Commands;

/// <summary>What commands say beside their results.</summary>
internal static class CommandWords
{
    public const string FieldsessionFieldsessionListsCommandsFieldsessionCommand = "fieldsession: 'fieldsession --help' lists the commands, 'fieldsession COMMAND --help' its words";
    public const string BlindComparisonOfTyreSpecsOnRoad = "Blind comparison of tyre specs on the road, from the question to the report.";
    public const string RevealGiveKeyfileForEveryFitting = "reveal: give '--key KEYFILE' for every fitting; the study was sealed with a key file";
    public const string WhichSpecIsControl = "which spec is the control (Enter: not told)? ";
    public const string PassphraseOfKeyFile = "the passphrase of the key file, for seal and reveal; without it it is asked for.";
    public const string SetToAnything = "set to anything: no colours.";
    public const string WhereListOfRecentStudiesLies = "where the list of recent studies lies; else ~/.local/state.";
    public const string WhereKeysOfYourOwnLie = "where keys of your own lie; else ~/.config.";
    public const string StudyLitedbFileAndSameLines = "a study: a LiteDB file and the same lines as text. Either brings the other back.";
    public const string PathsOfStudiesOpenedLast = "paths of the studies opened last, nothing of what stands in them.";
    public const string KeysOfYourOwn = "keys of your own.";
    public const string AnswerIsNoRule = "the answer is no: a rule stands against it, a check failed, some lines were refused.";
    public const string WordsOrInputAreWrong = "the words or the input are wrong; what, where and what to do is said.";
    public const string FileIsDamaged = "a file is damaged, locked or can't be written; nothing was overwritten.";
    public const string FieldsessionBlindComparisonOfTyreSpecsOnRoad = "fieldsession \\- blind comparison of tyre specs on the road";
    public const string WithoutCommandAtTerminalStartScreen = "Without a command, at a terminal, the start screen opens: recent studies, a new one, the demo.";
    public const string DataGoToStandardOutput = "Data go to standard output, messages to standard error.";
    public const string ThereIsNoStudyYet = "there is no study yet: 'start' makes it from the plan";
    public const string EndOfStudy = "the end of the study";
    public const string ThereIsNoSuchFolder = "there is no such folder";

    public static string IsNotCopiedTo(string what, string place, string why) => $"{what} is not copied to {place}: {why}";

    public static string FieldsessionMendOrMoveFileAreAsDelivered(string path, Exception unreadable, string name) => $"fieldsession: {path}: {unreadable.Message}; mend or move the file, the {name} are as delivered without it";
}
