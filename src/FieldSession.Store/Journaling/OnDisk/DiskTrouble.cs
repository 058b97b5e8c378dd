using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What the system says when it can't write, in as few words as a header has room for.</summary>
internal static class DiskTrouble
{
    // error numbers of Linux and macOS as .NET hands them on, and of Windows (from memory)
    private static readonly ImmutableArray<int> Full = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];
    private static readonly ImmutableArray<int> Gone = [6, 19, 70, 116, unchecked((int)0x80070015), unchecked((int)0x8007048F)];

    // a medium that can't be read or written any more looks the same as one that was pulled out; also the wrong checksum of Windows
    private static readonly ImmutableArray<int> Failing = [5, unchecked((int)0x80070017), unchecked((int)0x8007045D)];

    // a share whose network or server is away: the open file works again by itself once it is back
    private static readonly ImmutableArray<int> Silent = [110, 60, unchecked((int)0x80070079)];
    private static readonly ImmutableArray<int> WithoutLocks = [37, 77];
    private static readonly ImmutableArray<int> ReadOnly = [30, unchecked((int)0x80070013)];

    /// <summary>Whether the drive may only be read.</summary>
    public static bool IsReadOnly(Exception fault) => ReadOnly.Contains(fault.HResult);

    /// <summary>What is the matter; the system's own words where nothing shorter is known.</summary>
    public static string InWords(Exception fault) => Told(fault).Words;

    /// <summary>A disk that said yes and has something else, or nothing: the same to a crew as one that fails.</summary>
    public static IOException OfALyingDisk(string path) => new(FileOnDiskWords.DiskGivesBackOther(path), Failing[0]);

    /// <summary>What to do about it.</summary>
    public static string Remedy(Exception fault) => Told(fault).Remedy;

    private static (string Words, string Remedy) Told(Exception fault) =>
        fault switch
        {
            UnauthorizedAccessException => (FileOnDiskWords.WritingIsNotAllowed, FileOnDiskWords.AllowWriting),
            FileNotFoundException or DirectoryNotFoundException => (FileOnDiskWords.DriveIsGone, FileOnDiskWords.BringItBack),
            _ when Full.Contains(fault.HResult) => (FileOnDiskWords.DiskIsFull, FileOnDiskWords.MakeRoom),
            _ when Gone.Contains(fault.HResult) => (FileOnDiskWords.DriveIsGone, FileOnDiskWords.BringItBack),
            _ when Failing.Contains(fault.HResult) => (FileOnDiskWords.DriveFails, FileOnDiskWords.BringItBackOrGoOnElsewhere),
            _ when Silent.Contains(fault.HResult) => (FileOnDiskWords.DriveDoesNotAnswer, FileOnDiskWords.SeeToCableOrNetwork),
            _ when WithoutLocks.Contains(fault.HResult) => (FileOnDiskWords.ShareGivesNoLocks, FileOnDiskWords.LetServerGiveLocks),
            _ when IsReadOnly(fault) => (FileOnDiskWords.DriveMayOnlyBeRead, FileOnDiskWords.AllowWriting),
            _ => (fault.Message, FileOnDiskWords.AllowWriting),
        };
}

/// <summary>Turns what the system says about a file into what the crew can do about it.</summary>
internal static class Refusal
{
    // EWOULDBLOCK of Linux and of macOS, sharing violation of Windows
    private static readonly ImmutableArray<int> Locked = [11, 35, unchecked((int)0x80070020)];

    /// <summary>Runs a step of opening, copying or making a study.</summary>
    /// <param name="path">The file it is about.</param>
    /// <param name="step">The step.</param>
    /// <exception cref="StudyFileException">What the system said, in the crew's words.</exception>
    public static T Of<T>(string path, Func<T> step)
    {
        try
        {
            return step();
        }
        catch (Exception fault) when (InWords(path, fault) is { } refusal)
        {
            throw refusal;
        }
    }

    /// <summary>Whether somebody else holds the file.</summary>
    internal static bool IsLock(Exception fault) => fault is IOException && Locked.Contains(fault.HResult);

    internal static StudyFileException? InWords(string path, Exception fault) =>
        fault switch
        {
            StudyFileException => null,
            _ when fault is UnauthorizedAccessException || DiskTrouble.IsReadOnly(fault) => new StudyUnwritableException(
                FileOnDiskWords.FileMayNotBeWritten(path, fault),
                fault
            ),
            FileNotFoundException or DirectoryNotFoundException => new StudyMissingException(
                FileOnDiskWords.NoSuchFileOrFolder(path, fault),
                fault
            ),
            _ when IsLock(fault) => new StudyInUseException(FileOnDiskWords.StudyIsInUse(path), fault),
            _ => null,
        };
}

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

    public static string LineIsNotSafe(string trouble, string remedy, int line, int? firstLost, string path) =>
        $"{trouble}: line {line} is not in {path}{(firstLost is null ? "; every line before it is" : "")}. {remedy}, then "
        + $"do the act again.{(firstLost is { } lost ? LinesAreLostToo(lost) : "")}";

    private static string LinesAreLostToo(int first) =>
        $" The disk also lost line {first} and what follows, which it had confirmed; they are in memory, so keep this "
        + "program open: it writes them again with the next act.";

    public static string StudyIsFull(string path, long mebibytes, long mostMebibytes) =>
        $"the study is full: {path} has {mebibytes} MiB, and {mostMebibytes} MiB is the most. Begin a new study.";

    public static string FileBecameShorter(string path) => $"{path}: the file became shorter while it was open.";

    public static string AnotherFileLiesThere(string path) => $"{path}: another file is there now.";

    public static string DiskGivesBackOther(string path) => $"{path}: the disk took the lines but reads back different ones.";

    public const string FileIsOnlyLookedAt = "the file is only read";

    public static string NameIsOfJournal(string path, string studyPath) =>
        $"{path}: this is the name of a study's journal. Name the study itself, for example {studyPath}.";

    public static string FileMayNotBeWritten(string path, Exception fault) =>
        $"{path}: the file or its folder may not be written to ({fault.Message}). Nothing was changed. Allow writing "
        + "there, or copy the study to a folder that may be written to.";

    public static string NoSuchFileOrFolder(string path, Exception fault) =>
        $"{path}: there is no such file or folder ({fault.Message}). Nothing was changed. Check the path.";

    public static string StudyIsTooLarge(string path, long mebibytes, long mostMebibytes) =>
        $"{path}: {mebibytes} MiB are more than the {mostMebibytes} MiB that a study may have. Nothing was changed. Check "
        + "the path; if this is the study, bring back a copy of it.";

    public static string StudyIsInUse(string path) =>
        $"{path}: the study is open in another window or program. Nothing was changed. Close it there, then open it here.";

    public static string RemarkOnUnsaved(UnsavedAct act) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"# {act.At.UtcDateTime:yyyy-MM-dd HH:mm:ss} UTC, not saved: {act.Because.ReplaceLineEndings(" ")}"
        );
}
