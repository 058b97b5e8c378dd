using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>
/// Several files that appear together. Where the folder holds nothing else, it is exchanged as a whole (<see cref="WholeFolder"/>).
/// Otherwise every file is written beside its place first, so that a full disk or a stop leaves the folder as it was; when all are on the
/// disk, the old ones are withdrawn, and only then the new ones get their names: a kill in between leaves some of the new files, never old
/// ones beside them.
/// </summary>
internal static class FilesTogether
{
    private const string Unfinished = ".unfinished";

    /// <summary>Writes the files into a folder, which is made where it is missing; when this returns, they are safe on the disk.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="files">Names and bytes.</param>
    /// <param name="earlier">The names of the files that an earlier writing left there; they are replaced or removed.</param>
    /// <param name="stop">Stops it; nothing is changed then.</param>
    /// <exception cref="ExportRefusedException">The folder is a file, or the disk takes no more; nothing is changed.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Write(
        string folder,
        IReadOnlyList<(string Name, byte[] Bytes)> files,
        IReadOnlySet<string> earlier,
        CancellationToken stop
    )
    {
        RefuseFile(folder);
        HashSet<string> ours = [.. earlier, .. files.SelectMany(file => new[] { file.Name, file.Name + Unfinished })];
        WholeFolder whole = new(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        string at = folder;
        try
        {
            Directory.CreateDirectory(whole.Parent);
            if (whole.Fits(ours) && whole.TryWrite(files, Written))
            {
                return;
            }

            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw Refused(at, fault);
        }

        Write(new Disk(), folder, files, earlier, stop);

        void Written(string path)
        {
            stop.ThrowIfCancellationRequested();
            at = path;
        }
    }

    /// <summary>The same in a folder that is there and holds other files as well.</summary>
    /// <exception cref="ExportRefusedException">The disk takes no more; the message says whether something was changed.</exception>
    /// <exception cref="OperationCanceledException">It was stopped; nothing is changed.</exception>
    public static void Write(
        IDisk disk,
        string folder,
        IReadOnlyList<(string Name, byte[] Bytes)> files,
        IReadOnlySet<string> earlier,
        CancellationToken stop
    )
    {
        string[] paths = [.. files.Select(file => Path.Combine(folder, file.Name))];
        string at = folder;
        try
        {
            foreach (((string _, byte[] bytes), string path) in files.Zip(paths))
            {
                stop.ThrowIfCancellationRequested();
                at = path;
                WholeFile.WriteNew(disk, path + Unfinished, bytes, FileMode.Create);
            }

            stop.ThrowIfCancellationRequested();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            Discard(disk, paths);
            throw fault is OperationCanceledException ? fault : Refused(at, fault);
        }

        try
        {
            // by the first file the next writing knows the others as its own, so it goes last and comes first
            Withdraw(disk, [.. earlier.Select(name => Path.Combine(folder, name)).Where(disk.Exists).OrderBy(path => path == paths[0])]);
            foreach (string path in paths)
            {
                at = path;
                disk.Move(path + Unfinished, path);
            }

            disk.SyncFolderOf(paths[0]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new ExportRefusedException(ExportWords.LeftUnfinished(at, fault, Unfinished), fault);
        }
    }

    private static void Withdraw(IDisk disk, string[] paths)
    {
        foreach (string path in paths)
        {
            disk.Delete(path);
        }

        // their going has to be on the disk before a new one comes, or a power cut would mix them
        if (paths.Length > 0)
        {
            disk.SyncFolderOf(paths[0]);
        }
    }

    private static void RefuseFile(string folder)
    {
        if (File.Exists(folder))
        {
            throw new ExportRefusedException(ExportWords.FolderIsFile(folder));
        }
    }

    private static void Discard(IDisk disk, string[] paths)
    {
        foreach (string path in paths)
        {
            _ = Attempt.Of(() => disk.Delete(path + Unfinished));
        }
    }

    private static ExportRefusedException Refused(string path, Exception fault) => new(ExportWords.CantBeWritten(path, fault), fault);
}

/// <summary>An export can't be written where it was asked for. The message names the file, what is wrong, and what to do.</summary>
/// <param name="message">The message.</param>
/// <param name="cause">What the system said; null: nothing.</param>
public sealed class ExportRefusedException(string message, Exception? cause = null) : IOException(message, cause);
