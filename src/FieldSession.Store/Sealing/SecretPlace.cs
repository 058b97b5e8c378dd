using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Sealing;

/// <summary>Where the custodian's list may be written: nowhere near a study.</summary>
public static class SecretPlace
{
    private static string[] StudyFiles => ["*.study", "*.journal"];

    /// <summary>What rules out writing who is who into a file; null: nothing.</summary>
    /// <param name="path">The file.</param>
    /// <param name="studyName">The study that the list is of.</param>
    public static Objection? ObjectionTo(string path, string studyName)
    {
        DirectoryInfo? folder = new FileInfo(Path.GetFullPath(path)).Directory;
        if (folder is null || !folder.Exists)
        {
            return null;
        }

        if (Studies(folder).FirstOrDefault() is { } beside)
        {
            return new Objection(KeyFileWords.StudyLiesBeside(beside), KeyFileWords.NameFolderAwayFromStudy);
        }

        for (DirectoryInfo? above = folder.Parent; above is not null; above = above.Parent)
        {
            if (Studies(above).FirstOrDefault(study => IsOf(study, studyName)) is { } inside)
            {
                return new Objection(KeyFileWords.StudyLiesAbove(inside), KeyFileWords.NameFolderAwayFromStudy);
            }
        }

        return null;
    }

    private static IEnumerable<string> Studies(DirectoryInfo folder)
    {
        try
        {
            return [.. StudyFiles.SelectMany(pattern => folder.EnumerateFiles(pattern)).Select(file => file.FullName)];
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool IsOf(string path, string studyName)
    {
        try
        {
            Study study = Logbook.Fold(StudyGlance.LinesOf(Path.ChangeExtension(path, ".study")));
            return study.Plan?.StudyName == studyName;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return false;
        }
    }
}

/// <summary>A sheet that names the specs, for the custodian alone.</summary>
public static class SecretSheet
{
    /// <summary>Writes it whole or not at all, for its owner alone (on Unix), never over another file.</summary>
    /// <exception cref="IOException">It could not be written, or a file of that name is there; nothing was left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Write(string path, byte[] bytes) => PrivateFile.Write(path, bytes);
}

/// <summary>Writes a private file that is there whole or not at all.</summary>
internal static class PrivateFile
{
    /// <summary>
    /// Writes beside the file, forces it to disk, then gives it its name and forces the folder too; a file already there is never replaced.
    /// What a kill left beside it, which may hold names of specs, goes with the next try.
    /// </summary>
    /// <exception cref="IOException">It could not be written, or a file of that name is there; nothing was left behind.</exception>
    public static void Write(string path, byte[] bytes)
    {
        string beside = $"{path}.unfinished";
        FileStreamOptions options = new()
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
            BufferSize = 0,
        };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            File.Delete(beside);
            using (FileStream file = new(beside, options))
            {
                file.Write(bytes);
                DiskFlush.File(file.SafeFileHandle, beside);
            }

            Patience.WithName(() => File.Move(beside, path, overwrite: false));
            MakeSafe(path, bytes);
        }
        finally
        {
            Patience.WithName(() => File.Delete(beside));
        }
    }

    // on a stick that has no links .NET copies where it should rename: the copy is flushed as well
    private static void MakeSafe(string path, byte[] bytes)
    {
        try
        {
            using (FileStream file = Patience.With(() => new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None)))
            {
                DiskFlush.File(file.SafeFileHandle, path);
            }

            Disk disk = new();
            ReadBack.Demand(disk, path, bytes);
            disk.SyncFolderOf(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            File.Delete(path);
            throw;
        }
    }
}
