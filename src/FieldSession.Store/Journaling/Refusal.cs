using System.Collections.Immutable;

namespace FieldSession.Store.Journaling;

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

    internal static StudyFileException? InWords(string path, Exception fault) => fault switch
    {
        StudyFileException => null,
        _ when fault is UnauthorizedAccessException || DiskTrouble.IsReadOnly(fault) => new StudyUnwritableException(
            FileOnDiskWords.FileMayNotBeWritten(path, fault),
            fault),
        FileNotFoundException or DirectoryNotFoundException => new StudyMissingException(
            FileOnDiskWords.NoSuchFileOrFolder(path, fault), fault),
        _ when IsLock(fault) => new StudyInUseException(
            FileOnDiskWords.StudyIsInUse(path), fault),
        _ => null,
    };
}
