using FieldSession.Archiving;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Archiving;

/// <summary>What a folder of studies holds.</summary>
/// <param name="Studies">The studies, by the time of their first run.</param>
/// <param name="Problems">Studies that can't be read, a sentence each.</param>
/// <param name="ReadAnew">How many studies were read, because the index did not know them as they are.</param>
/// <param name="IndexFault">Why the index could not be written; null: it was, or nothing was new.</param>
public sealed record ArchiveReading(IReadOnlyList<ArchivedStudy> Studies, IReadOnlyList<string> Problems, int ReadAnew, string? IndexFault);

/// <summary>
/// A folder of studies, with all folders below it, as the archive of a crew or a team. Studies are only read. An index beside them
/// keeps what the archive needs of each, by size and time of its file; it can be thrown away at any time and is made anew.
/// </summary>
public static class ArchiveFolder
{
    /// <summary>Reads a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static ArchiveReading Read(string folder)
    {
        string root = Path.GetFullPath(folder);
        if (!Directory.Exists(root))
        {
            throw new DirectoryNotFoundException(ArchiveFolderWords.NoSuchFolder(folder));
        }

        Dictionary<string, IndexedStudy> known = ArchiveIndex.In(root);
        StudyStamp[] stamps = [.. StudiesIn(root).Select(path => StudyStamp.Of(root, path))];
        IndexedStudy?[] found = new IndexedStudy?[stamps.Length];
        string?[] problems = new string?[stamps.Length];
        Parallel.For(0, stamps.Length, i => (found[i], problems[i]) = known.TryGetValue(stamps[i].Path, out IndexedStudy? same) && same.Stamp == stamps[i]
            ? (same, null)
            : ReadAnew(root, stamps[i]));
        IndexedStudy[] studies = [.. found.OfType<IndexedStudy>()];
        int anew = studies.Count(study => !(known.TryGetValue(study.Stamp.Path, out IndexedStudy? same) && ReferenceEquals(same, study)));
        string? fault = anew > 0 || known.Count != studies.Length ? ArchiveIndex.Write(root, studies) : null;
        return new ArchiveReading(
            [.. studies.Select(study => study.Study).OrderBy(study => study.Began ?? DateTimeOffset.MaxValue).ThenBy(study => study.Name, StringComparer.Ordinal)],
            [.. problems.OfType<string>()],
            anew,
            fault);
    }

    private static IEnumerable<string> StudiesIn(string root) => Directory.EnumerateFiles(
        root, "*.study", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true })
        .Where(path => !Path.GetFileNameWithoutExtension(path).EndsWith("-log", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    private static (IndexedStudy? Study, string? Problem) ReadAnew(string root, StudyStamp stamp)
    {
        try
        {
            IReadOnlyList<Line> lines = ReadStudy.At(Path.Combine(root, stamp.Path)).Lines;
            Study study = Logbook.Fold(lines);
            return (new IndexedStudy(stamp, ArchivedStudy.Of(study, OpenedKey.In(lines.Select(EntryKinds.EntryIn)))), null);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or InvalidDataException or ArgumentException)
        {
            return (null, $"{stamp.Path}: left out: {unreadable.Message}");
        }
    }
}
