using FieldSession.Comparing;
using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Readings;

/// <summary>
/// Reads a readings CSV, the format in which readings come in from elsewhere and in which a study's own readings go out: RFC 4180, UTF-8, a
/// header, columns by name. Nothing is taken from a file with anything wrong in it. Columns: docs/files.md.
/// </summary>
public static class ReadingsCsv
{
    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<MeasuredDay> Read(string path)
    {
        // shared, so that a file that is open in a spreadsheet can be read
        FileStream stream = FileKind.OpenToRead(path);
        return Read(stream, path);
    }

    /// <summary>Reads a stream, which is closed then.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="name">The file's name for the problems.</param>
    public static FileRead<MeasuredDay> Read(Stream stream, string name)
    {
        FileProblems problems = new(name);
        using CsvSheet sheet = new(stream, problems, ReadingColumns.Names);
        ReadingRows rows = new(sheet);
        if (sheet.ReadHeader(ReadingColumns.Required))
        {
            while (sheet.ReadRow())
            {
                rows.Take();
            }

            SayIfNone(rows, problems);
            SayIfTooMany(rows, problems);
        }

        return problems.Any
            ? new FileRead<MeasuredDay>(null, problems.InWords, problems.More)
            : new FileRead<MeasuredDay>(new MeasuredDay(rows.Levels, rows.Missed, rows.Segments) { OrderRuns = rows.OrderRuns }, [], 0);
    }

    private static void SayIfTooMany(ReadingRows rows, FileProblems problems)
    {
        if (rows.RunsSideBySide > CsvLimits.RunsSideBySide)
        {
            problems.Add(ReadingsFileWords.TooManyRunsSideBySide(rows.RunsSideBySide), ReadingsFileWords.GiveEachRunOwnTime);
        }
    }

    private static void SayIfNone(ReadingRows rows, FileProblems problems)
    {
        if (rows.Levels.Count == 0 && !problems.Any)
        {
            problems.Add(ReadingsFileWords.NoReading, ReadingsFileWords.OneReadingBelowHeader);
        }
    }
}

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
