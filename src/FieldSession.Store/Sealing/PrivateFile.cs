using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Sealing;

/// <summary>Writes a private file that is there whole or not at all.</summary>
internal static class PrivateFile
{
    /// <summary>
    /// Writes beside the file, forces it to disk, then gives it its name and forces the folder too; a file already there is never replaced. What a kill
    /// left beside it, which may hold names of specs, goes with the next try.
    /// </summary>
    /// <exception cref="IOException">It could not be written, or a file of that name is there; nothing was left behind.</exception>
    public static void Write(string path, byte[] bytes)
    {
        string beside = $"{path}.unfinished";
        FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };
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
