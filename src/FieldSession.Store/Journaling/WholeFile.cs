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
            using (IDiskFile file = disk.Open(unfinished, FileMode.Create))
            {
                file.Write(bytes, 0);
                file.Sync();
            }

            disk.Move(unfinished, path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _ = Attempt.Of(() => disk.Delete(unfinished));
            throw;
        }

        disk.SyncFolderOf(path);
    }
}
