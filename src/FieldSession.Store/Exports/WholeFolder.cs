using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>
/// A folder that appears with all its files at once: it is written beside its place and exchanged with the old one in a single step, so
/// that a kill or a power cut at any moment leaves the old files or the new ones. What is left beside it then is cleared by the next one.
/// </summary>
/// <param name="folder">Its full path.</param>
internal sealed class WholeFolder(string folder)
{
    private readonly string _unfinished = Beside(folder, "unfinished");
    private readonly string _before = Beside(folder, "before");

    /// <summary>The folder it lies in.</summary>
    public string Parent => Path.GetDirectoryName(folder) ?? folder;

    /// <summary>Whether it may be exchanged: it is not there, or holds nothing but some files, and nobody works in it.</summary>
    /// <param name="names">The names of the files that it may hold.</param>
    public bool Fits(IReadOnlySet<string> names)
    {
        PutBack();
        DirectoryInfo there = new(folder);
        return there.Parent is { Exists: true }
            && (
                !there.Exists
                || (
                    there.LinkTarget is null
                    && !IsWorkedIn()
                    && there.EnumerateFileSystemInfos().All(entry => entry is FileInfo && names.Contains(entry.Name))
                )
            );
    }

    /// <summary>
    /// Writes the folder; when this returns, it is safe on the disk. False: nothing can be made beside it, and nothing was changed.
    /// </summary>
    /// <param name="files">Names and bytes.</param>
    /// <param name="written">Told of each file before it is written; what it throws stops the whole.</param>
    /// <exception cref="IOException">The disk takes no more; nothing was changed.</exception>
    public bool TryWrite(IReadOnlyList<(string Name, byte[] Bytes)> files, Action<string> written)
    {
        if (Attempt.Of(() => Clear(_unfinished)) is not null || Attempt.Of(() => Directory.CreateDirectory(_unfinished)) is not null)
        {
            return false;
        }

        try
        {
            Fill(files, written);
            Take();
        }
        catch
        {
            _ = Attempt.Of(() => Clear(_unfinished));
            throw;
        }

        // the new folder is in its place and safe: what can't be cleared now is cleared by the next one
        _ = Attempt.Of(() => Clear(_unfinished));
        _ = Attempt.Of(() => Clear(_before));
        return true;
    }

    private static string Beside(string folder, string what) =>
        Path.Combine(Path.GetDirectoryName(folder) ?? folder, $".{Path.GetFileName(folder)}.{what}");

    private static void Clear(string stale)
    {
        if (Directory.Exists(stale))
        {
            Array.ForEach(Directory.GetFiles(stale), File.Delete);
            Directory.Delete(stale);
        }
    }

    private void Fill(IReadOnlyList<(string Name, byte[] Bytes)> files, Action<string> written)
    {
        Disk disk = new();
        foreach ((string name, byte[] bytes) in files)
        {
            written(Path.Combine(folder, name));
            WholeFile.WriteNew(disk, Path.Combine(_unfinished, name), bytes, FileMode.CreateNew);
        }

        written(folder);
        DiskFlush.Folder(_unfinished);
    }

    private void Take()
    {
        bool wasThere = Directory.Exists(folder);
        if (wasThere && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_unfinished, File.GetUnixFileMode(folder));
        }

        bool isExchanged = wasThere && !OperatingSystem.IsWindows() && Posix.Exchange(_unfinished, folder);
        if (!isExchanged)
        {
            // a system without that step: for a moment there is no folder of that name, and PutBack heals a kill in it
            Rename(wasThere ? folder : null, _before, _unfinished, folder);
        }

        try
        {
            DiskFlush.Folder(Parent);
        }
        catch (IOException)
        {
            GiveBack(isExchanged, wasThere);
            throw;
        }
    }

    private void GiveBack(bool isExchanged, bool wasThere)
    {
        if (!isExchanged || !Posix.Exchange(_unfinished, folder))
        {
            Rename(folder, _unfinished, wasThere ? _before : null, folder);
        }
    }

    private static void Rename(string? first, string firstTo, string? then, string thenTo)
    {
        if (first is not null)
        {
            Patience.WithName(() => Directory.Move(first, firstTo));
        }

        if (then is not null)
        {
            Patience.WithName(() => Directory.Move(then, thenTo));
        }
    }

    private void PutBack()
    {
        if (Directory.Exists(_before) && !Directory.Exists(folder))
        {
            Directory.Move(_before, folder);
        }
    }

    private bool IsWorkedIn() =>
        $"{Environment.CurrentDirectory}{Path.DirectorySeparatorChar}".StartsWith(
            $"{folder}{Path.DirectorySeparatorChar}",
            StringComparison.Ordinal
        );
}
