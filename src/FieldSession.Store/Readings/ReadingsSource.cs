using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Readings;

/// <summary>Tells a readings CSV from a study file.</summary>
public static class ReadingsSource
{
    private const int LookedAt = 8192;

    /// <summary>
    /// Whether a file is read as CSV: by its ending .csv, else by being text. A study file has a journal beside it, and NUL bytes from
    /// its first page on.
    /// </summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static bool IsCsv(string path)
    {
        if (Path.GetExtension(path).Equals(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        // A study that is open elsewhere can't be looked into.
        if (Path.Exists(StudyPaths.Of(path).Journal))
        {
            return false;
        }

        using FileStream stream = FileKind.OpenToRead(path);
        byte[] start = new byte[LookedAt];
        int read = stream.ReadAtLeast(start, LookedAt, throwOnEndOfStream: false);
        return !start.AsSpan(0, read).Contains((byte)0);
    }
}
