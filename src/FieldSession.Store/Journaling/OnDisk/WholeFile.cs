namespace FieldSession.Store.Journaling;

/// <summary>A file that appears whole or not at all: written beside its place, synchronised, then renamed.</summary>
internal static class WholeFile
{
    /// <summary>Writes the file; when this returns, it is safe on disk.</summary>
    /// <exception cref="IOException">It could not be written, and what lay in its place still lies there; or its new name could not be made
    /// safe.</exception>
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

    /// <summary>
    /// Writes a file under the name it has for now; when this returns, its bytes are on the disk, and its name may not be.
    /// </summary>
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

/// <summary>
/// What was written and flushed, read again from the disk itself. Some disks say yes to a flush and have nothing: a stick that pretends to
/// be larger than it is, the loop device of Linux 6.18 whose backing is full (docs/reliability.md). What the system remembers of the file
/// would hide it.
/// </summary>
internal static class ReadBack
{
    private const int MostAtOnceBytes = 1 << 20;

    /// <summary>Returns when the disk gives back what it took.</summary>
    /// <param name="disk">Where the file is; a system that can't be read past its memory is believed.</param>
    /// <param name="path">The file's name.</param>
    /// <param name="bytes">What was written.</param>
    /// <param name="at">Where in the file.</param>
    /// <exception cref="IOException">The disk gives back something else, or nothing.</exception>
    public static void Demand(IDisk disk, string path, ReadOnlySpan<byte> bytes, long at = 0)
    {
        using IDiskFile? file = disk.LookPastMemory(path);
        if (file is not null && !IsThere(bytes, at, file))
        {
            throw DiskTrouble.OfALyingDisk(path);
        }
    }

    /// <summary>Whether a file holds these bytes at a place; what can't be read is not there.</summary>
    public static bool IsThere(ReadOnlySpan<byte> bytes, long at, IDiskFile file)
    {
        byte[] found = new byte[Math.Min(bytes.Length, MostAtOnceBytes)];
        for (int done = 0; done < bytes.Length; done += found.Length)
        {
            Range wanted = ..Math.Min(found.Length, bytes.Length - done);
            int read = 0;
            long place = at + done;
            Exception? unreadable = Attempt.Of(() => read = file.Read(found.AsSpan(wanted), place));
            if (unreadable is not null || !found.AsSpan(0, read).SequenceEqual(bytes[done..][wanted]))
            {
                return false;
            }
        }

        return true;
    }
}
