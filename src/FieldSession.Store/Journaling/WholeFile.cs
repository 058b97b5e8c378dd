namespace FieldSession.Store.Journaling;

/// <summary>A file that appears whole or not at all: written beside its place, synchronised, then renamed.</summary>
internal static class WholeFile
{
    /// <summary>Writes the file; when this returns, it is safe on disk.</summary>
    /// <exception cref="IOException">It could not be written, and what lay in its place still lies there; or its new name could not be made safe.</exception>
    public static void Write(IDisk disk, string path, ReadOnlySpan<byte> bytes)
    {
        string unfinished = path + ".unfinished";
        try
        {
            WriteNew(disk, unfinished, bytes, FileMode.Create);
            disk.Move(unfinished, path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _ = Attempt.Of(() => disk.Delete(unfinished));
            throw;
        }

        disk.SyncFolderOf(path);
    }

    /// <summary>Writes a file under the name it has for now; when this returns, its bytes are on the disk, and its name may not be.</summary>
    /// <exception cref="IOException">It could not be written, or the disk gives back something else.</exception>
    public static void WriteNew(IDisk disk, string path, ReadOnlySpan<byte> bytes, FileMode mode)
    {
        using (IDiskFile file = disk.Open(path, mode))
        {
            file.Write(bytes, 0);
            file.Sync();
        }

        ReadBack.Demand(disk, path, bytes);
    }
}
