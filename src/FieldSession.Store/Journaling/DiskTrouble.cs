using System.Collections.Immutable;

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

    private static (string Words, string Remedy) Told(Exception fault) => fault switch
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
