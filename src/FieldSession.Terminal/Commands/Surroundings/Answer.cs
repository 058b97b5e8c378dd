using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>How a command answers for one act.</summary>
internal static class Answer
{
    /// <summary>Says what came of an act, and gives the exit code that fits it.</summary>
    public static int To(Outcome outcome, Surroundings outside)
    {
        if (outcome.Echo is { } echo)
        {
            outside.Output.WriteLine(echo.Words);
        }
        else
        {
            outside.Error.WriteLine(ShellWords.NotWritten(outcome));
        }

        return ExitCode.Of(outcome);
    }
}

/// <summary>What a command says to the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The answer is no: a rule rules it out, a check failed, some lines were refused.</summary>
    public const int No = 1;

    /// <summary>The words or the input are wrong.</summary>
    public const int Wrong = 2;

    /// <summary>A file is damaged, locked or can't be written.</summary>
    public const int Damaged = 3;

    /// <summary>Each code and what it means.</summary>
    public static (string Name, string Words)[] Meanings =>
        [
            ($"{Done}", "done."),
            ($"{No}", CommandWords.ExitAnswerNo),
            ($"{Wrong}", CommandWords.ExitInputWrong),
            ($"{Damaged}", CommandWords.ExitFileDamaged),
        ];

    /// <summary>The code for what came of one act.</summary>
    public static int Of(Outcome outcome) =>
        outcome switch
        {
            { IsWritten: true } => Done,
            { NotSavedBecause: not null } => Damaged,
            _ => No,
        };
}

/// <summary>What commands say beside their results.</summary>
internal static class CommandWords
{
    public const string WhereHelpIs = "fieldsession: 'fieldsession --help' lists the commands, 'fieldsession COMMAND --help' its words";
    public const string WhereTopicsAre = "'fieldsession help' lists what can be read about.";
    public const string HowToReadATopic = "'fieldsession help TOPIC' prints one; 'fieldsession --help' lists the commands.";
    public const string ProgramInOneSentence = "Blind comparison of tyre specs on the road, from the question to the report.";
    public const string GiveEveryKeyFile = "reveal: give '--key KEYFILE' for every fitting; the study was sealed with a key file";
    public const string AskForControl = "which spec is the control (Enter: not known)? ";
    public const string NothingIsStored = "nothing is stored: read all marks again; or '--as-read' opens the key with the names withheld";
    public const string PassphraseVariable =
        "the passphrase of the key file, for seal, fitting, keycheck and reveal; without it it is asked for.";
    public const string SecondPassphraseVariable = "the second passphrase of a key that two people hold.";
    public const string NoColourVariable = "set to anything: no colours.";
    public const string StateFolderVariable = "where recent studies, acknowledged lines and unsaved acts are kept; default ~/.local/state.";
    public const string ConfigFolderVariable = "where keys and habits of your own are kept; default ~/.config.";
    public const string StudyFiles = "a study: a LiteDB file and the same lines as text. Each can restore the other.";
    public const string RecentStudiesFile = "paths of the studies opened last, nothing of what is in them.";
    public const string AcknowledgedFiles =
        "how many lines of each study were acknowledged here, and the last hash: 'verify' compares them.";
    public const string UnsavedFiles = "typed lines that the study's disk would not take, without '--backup DIR'; 'enter' takes them.";
    public const string OwnKeysFile = "keys of your own.";
    public const string ExitAnswerNo = "the answer is no: a rule forbids it, a check failed, some lines were refused.";
    public const string ExitInputWrong = "the words or the input are wrong; what, where and what to do is said.";
    public const string ExitFileDamaged = "a file is damaged, locked or can't be written; nothing was overwritten.";
    public const string ManPageName = "fieldsession \\- blind comparison of tyre specs on the road";
    public const string WithoutACommand = "Without a command, at a terminal, the start screen opens: recent studies, a new one, the demo.";
    public const string WhereOutputGoes = "Data go to standard output, messages to standard error.";
    public const string NoStudyYet = "there is no study yet: 'start' makes it from the plan";
    public const string EndOfStudy = "the end of the study";

    public static string RulesHoldUpTo(int lines) =>
        $"only the first {lines} lines could be checked for entries, commitment and freeze; no rule is broken in them";

    public const string NoLineToCheck = "the journal does NOT hold: no line of it can be read, so nothing else could be checked";
    public const string ActsKeptNowhere = "They are kept nowhere else: write them down, and name a second place with '--backup DIR'.";
    public const string NoSuchFolder = "there is no such folder";

    public static string NoTrialsYet(ExampleNames own) =>
        $"no trials are planned; type 'trials {own.Code} {own.Other} n=24 which is louder' first";

    public const string NothingIsDrivenYet = "nothing has been driven yet; type a run or a leg first";

    public const string LockPredictions = "lock the predictions";
    public const string KeepTables = "keep the tables";

    public static string Next(string what, string command) => $"next: {what}: fieldsession {command}";

    public static string NoRunOnThisCode(IEnumerable<string> codes) => $"no run on this code; the codes are {string.Join(", ", codes)}";

    public static string AskForPassphrase(string name) => $"passphrase of {name}: ";

    public static string AskForSecondPassphrase(string name) => $"second passphrase of {name}: ";

    public static string AskForReader(string which) => $"{which} reader of the marks: ";

    public static string ReadAgain(string failed) => $"{failed}; read the tyres again";

    public static string NameTwoReaders(string failed) => $"{failed}; name two, with '--reader' or when asked";

    public static string NoSpecList(string path) => $"{path}: there is no such file; give a text file with one spec name a line";

    public static string AskForMark(SpecCode code) => $"mark under the tape of the tyres driven as {code}: ";

    public static string OutputIsNotWhole(string why) =>
        $"standard output takes no more ({why}), so what was printed is not whole. What was answered 'ok' before is "
        + "stored. Print to another place.";

    public static string StudyNeverBegun(string path) =>
        $"{path}: the study holds no line: making it was cut off. Nothing is lost. Make it again with 'fieldsession start "
        + $"PLAN_DIR {path}'.";

    public static string ActsAreInMemory(int acts, string where) =>
        $"NOT SAVED: {acts} {(acts == 1 ? "act is" : "acts are")} only in memory. {where}";

    public static string ActsNotInStudy(int acts, string study) =>
        $"NOT SAVED: {acts} {(acts == 1 ? "act" : "acts")} typed here {(acts == 1 ? "is" : "are")} not in {study}:";

    public static string ActsKeptIn(string file, string study) =>
        $"They are kept in {file}: 'fieldsession enter {study} < {file}' types them in, then remove it.";

    public static string ActsCantBeKept(string file, string why) => $"They can't be kept in {file} either ({why}): write them down.";

    public static string ActsOfEarlierSittingKept(string file, string study) =>
        $"{file} holds acts that could not be saved earlier: 'fieldsession enter {study} < {file}' types them in, then remove it.";

    public static string NotCopied(string stretch, string folder, string why) => $"{stretch} is not copied to {folder}: {why}";

    public static string NoFolderForCopies(string folder) =>
        $"no copies yet: {folder} is not there; plug the stick in, or name another folder with '--backup'";

    public static string OwnFileUnreadable(string path, Exception unreadable, string subject) =>
        $"fieldsession: {path}: {unreadable.Message}; fix or move the file; until then the {subject} keep their defaults";
}
