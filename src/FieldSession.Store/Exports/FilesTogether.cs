using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>
/// Several files that appear together: every one is written beside its place and renamed only when all of them are on the disk, so that a full disk or
/// a stop in between leaves the folder as it was.
/// </summary>
internal static class FilesTogether
{
    private const string Unfinished = ".unfinished";

    /// <summary>Makes a folder where it is missing.</summary>
    /// <exception cref="ExportRefusedException">It is a file, or can't be made.</exception>
    public static void MakeFolder(string folder)
    {
        if (File.Exists(folder))
        {
            throw new ExportRefusedException(ExportWords.FolderIsFile(folder));
        }

        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw Refused(folder, fault);
        }
    }

    /// <summary>Writes the files; when this returns, they are safe on the disk.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="folder">A folder that is there.</param>
    /// <param name="files">Names and bytes.</param>
    /// <param name="stop">Stops it; nothing is changed then.</param>
    /// <exception cref="ExportRefusedException">The disk takes no more; nothing is changed.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Write(IDisk disk, string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, CancellationToken stop)
    {
        string[] paths = [.. files.Select(file => Path.Combine(folder, file.Name))];
        string at = folder;
        try
        {
            foreach (((string _, byte[] bytes), string path) in files.Zip(paths))
            {
                stop.ThrowIfCancellationRequested();
                at = path;
                using IDiskFile file = disk.Open(path + Unfinished, FileMode.Create);
                file.Write(bytes, 0);
                file.Sync();
            }

            stop.ThrowIfCancellationRequested();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            Discard(disk, paths);
            throw fault is OperationCanceledException ? fault : Refused(at, fault);
        }

        Rename(disk, paths);
    }

    private static void Rename(IDisk disk, string[] paths)
    {
        foreach (string path in paths)
        {
            disk.Move(path + Unfinished, path);
        }

        disk.SyncFolderOf(paths[0]);
    }

    private static void Discard(IDisk disk, string[] paths)
    {
        foreach (string path in paths)
        {
            _ = Attempt.Of(() => disk.Delete(path + Unfinished));
        }
    }

    private static ExportRefusedException Refused(string path, Exception fault) => new(
        ExportWords.CantBeWritten(path, fault), fault);
}
