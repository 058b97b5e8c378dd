namespace FieldSession.Store.Journaling;

/// <summary>A file that appears whole or not at all: written beside its place, synchronised, then renamed.</summary>
internal static class WholeFile
{
    public static void Write(IDisk disk, string path, ReadOnlySpan<byte> bytes)
    {
        string unfinished = path + ".unfinished";
        using (IDiskFile file = disk.Open(unfinished, FileMode.Create))
        {
            file.Write(bytes, 0);
            file.Sync();
        }

        disk.Move(unfinished, path);
        disk.SyncFolderOf(path);
    }
}
