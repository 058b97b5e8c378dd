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

    internal static StudyFileException? InWords(string path, Exception fault) => fault switch
    {
        StudyFileException => null,
        _ when fault is UnauthorizedAccessException || DiskTrouble.IsReadOnly(fault) => new StudyUnwritableException(
            $"{path}: the file or its folder may not be written to ({fault.Message}). Nothing was changed. Allow writing there, or copy the study to a folder that may be written to.",
            fault),
        FileNotFoundException or DirectoryNotFoundException => new StudyMissingException(
            $"{path}: there is no such file or folder ({fault.Message}). Nothing was changed. Check the path.", fault),
        IOException when Locked.Contains(fault.HResult) => new StudyInUseException(
            $"{path}: the study is open in another window or program. Nothing was changed. Close it there, then open it here.", fault),
        _ => null,
    };
}
