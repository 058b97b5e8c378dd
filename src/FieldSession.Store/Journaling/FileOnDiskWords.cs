using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What is said of the disk below a study, and what to do about it.</summary>
internal static class FileOnDiskWords
{
    // what the disk says, and what to do
    public const string WritingIsNotAllowed = "writing is not allowed";
    public const string DriveIsGone = "the drive is gone";
    public const string DriveFails = "the drive fails or is gone";
    public const string DiskIsFull = "the disk is full";
    public const string DriveDoesNotAnswer = "the drive does not answer";
    public const string ShareGivesNoLocks = "the share does not lock files";
    public const string DriveMayOnlyBeRead = "the drive may only be read";
    public const string MakeRoom = "Make room on it";
    public const string BringItBack = "Bring it back";
    public const string BringItBackOrGoOnElsewhere = "Bring it back, or go on with a copy on another one";
    public const string SeeToCableOrNetwork = "Check its cable or network";
    public const string LetServerGiveLocks = "Make its server lock files again";
    public const string AllowWriting = "Allow writing there";

    public static string LineIsNotSafe(string trouble, string remedy, int line, int? firstLost, string path) => $"{trouble}: line {line} is not in {path}{(firstLost is null ? "; every line before it is" : "")}. {remedy}, then do the act again.{(firstLost is { } lost ? LinesAreLostToo(lost) : "")}";

    private static string LinesAreLostToo(int first) => $" The disk also lost line {first} and what follows, which it had confirmed; they are in memory, so keep this program open: it writes them again with the next act.";

    public static string StudyIsFull(string path, long mebibytes, long mostMebibytes) => $"the study is full: {path} has {mebibytes} MiB, and {mostMebibytes} MiB is the most. Begin a new study.";

    public static string FileBecameShorter(string path) => $"{path}: the file became shorter while it was open.";

    public static string AnotherFileLiesThere(string path) => $"{path}: another file is there now.";

    public static string DiskGivesBackOther(string path) => $"{path}: the disk took the lines but reads back different ones.";

    public const string FileIsOnlyLookedAt = "the file is only read";

    public static string NameIsOfJournal(string path, string studyPath) => $"{path}: this is the name of a study's journal. Name the study itself, for example {studyPath}.";

    public static string FileMayNotBeWritten(string path, Exception fault) => $"{path}: the file or its folder may not be written to ({fault.Message}). Nothing was changed. Allow writing there, or copy the study to a folder that may be written to.";

    public static string NoSuchFileOrFolder(string path, Exception fault) => $"{path}: there is no such file or folder ({fault.Message}). Nothing was changed. Check the path.";

    public static string StudyIsTooLarge(string path, long mebibytes, long mostMebibytes) => $"{path}: {mebibytes} MiB are more than the {mostMebibytes} MiB that a study may have. Nothing was changed. Check the path; if this is the study, bring back a copy of it.";

    public static string StudyIsInUse(string path) => $"{path}: the study is open in another window or program. Nothing was changed. Close it there, then open it here.";

    public static string RemarkOnUnsaved(UnsavedAct act) => string.Create(
        CultureInfo.InvariantCulture, $"# {act.At.UtcDateTime:yyyy-MM-dd HH:mm:ss} UTC, not saved: {act.Because.ReplaceLineEndings(" ")}");
}
