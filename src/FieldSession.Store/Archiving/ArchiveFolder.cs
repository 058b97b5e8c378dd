using FieldSession.Archiving;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Archiving;

/// <summary>What a folder of studies holds.</summary>
/// <param name="Studies">The studies, each once, by the time of their first run.</param>
/// <param name="Problems">Studies that can't be read, and those whose copies went on differently, a sentence each.</param>
/// <param name="Copies">Studies with copies or earlier states that were passed over, a sentence each.</param>
/// <param name="ReadAgain">How many studies were read, because the index did not know them as they are.</param>
/// <param name="IndexFault">Why the index could not be written; null: it was, or nothing was new.</param>
public sealed record ArchiveReading(
    IReadOnlyList<ArchivedStudy> Studies,
    IReadOnlyList<string> Problems,
    IReadOnlyList<string> Copies,
    int ReadAgain,
    string? IndexFault
);

/// <summary>
/// A folder of studies, with all folders below it, as the archive of a crew or a team. Studies are only read. An index beside them
/// keeps what the archive needs of each, by size and time of its file; it can be thrown away at any time and is made again.
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
        Parallel.For(
            0,
            stamps.Length,
            i =>
                (found[i], problems[i]) =
                    known.TryGetValue(stamps[i].Path, out IndexedStudy? same) && same.Stamp == stamps[i]
                        ? (same, null)
                        : ReadAgain(root, stamps[i])
        );
        IndexedStudy[] studies = [.. found.OfType<IndexedStudy>()];
        int anew = studies.Count(study => !(known.TryGetValue(study.Stamp.Path, out IndexedStudy? same) && ReferenceEquals(same, study)));
        string? fault = anew > 0 || known.Count != studies.Length ? ArchiveIndex.Write(root, studies) : null;
        StudyCopies<IndexedStudy>[] once =
        [
            .. EachStudyOnce.Of(studies, study => study.State, study => ReadStudy.At(Path.Combine(root, study.Stamp.Path)).Lines),
        ];
        return new ArchiveReading(
            [
                .. once.Select(study => study.Newest?.Study)
                    .OfType<ArchivedStudy>()
                    .OrderBy(study => study.Began ?? DateTimeOffset.MaxValue)
                    .ThenBy(study => study.Name, StringComparer.Ordinal)
                    .ThenBy(study => study.Identity.Hash, StringComparer.Ordinal),
            ],
            [.. problems.OfType<string>(), .. once.Where(study => study.Newest is null).Select(ArchiveFolderWords.WentOnDifferently)],
            [.. once.Where(study => study is { Newest: not null, Others.Length: > 0 }).Select(ArchiveFolderWords.CountedOnce)],
            anew,
            fault
        );
    }

    private static IEnumerable<string> StudiesIn(string root) =>
        Directory
            .EnumerateFiles(root, "*.study", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true })
            .Where(path => !Path.GetFileNameWithoutExtension(path).EndsWith("-log", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static (IndexedStudy? Study, string? Problem) ReadAgain(string root, StudyStamp stamp)
    {
        try
        {
            IReadOnlyList<Line> lines = ReadStudy.At(Path.Combine(root, stamp.Path)).Lines;
            Study study = Logbook.Fold(lines);
            return StudyState.Of(lines) is { } state
                ? (
                    new IndexedStudy(stamp, state, ArchivedStudy.Of(state.Study, study, OpenedKey.In(lines.Select(EntryKinds.EntryIn)))),
                    null
                )
                : (null, ArchiveFolderWords.NothingInIt(stamp.Path));
        }
        catch (Exception unreadable)
            when (unreadable is IOException or UnauthorizedAccessException or InvalidDataException or ArgumentException)
        {
            return (null, $"{stamp.Path}: left out: {unreadable.Message}");
        }
    }
}

/// <summary>Why a study or a folder is left out of an archive.</summary>
internal static class ArchiveFolderWords
{
    public static string NoSuchFolder(string folder) =>
        $"{folder}: there is no such folder. Give the folder that holds the finished studies.";

    public static string NothingInIt(string path) => $"{path}: left out: no line was ever written into it.";

    /// <summary>A study that is there several times: which file counts.</summary>
    public static string CountedOnce(StudyCopies<IndexedStudy> study) =>
        $"{study.Newest!.Stamp.Path}: study {study.Study.ShortHash} counts once; "
        + (
            study.Others.Length == 1
                ? $"{study.Others[0].Stamp.Path} is a copy or an earlier state of it."
                : $"{study.Others.Length} files are copies or earlier states of it."
        );

    /// <summary>A study whose copies no file has all lines of: which files, and the cure.</summary>
    public static string WentOnDifferently(StudyCopies<IndexedStudy> study) =>
        $"{string.Join(", ", study.Others.Select(copy => copy.Stamp.Path))}: copies of study {study.Study.ShortHash} that "
        + "went on differently; it is left out. Merge one into the other first: fieldsession merge "
        + $"{study.Others[0].Stamp.Path} {study.Others[1].Stamp.Path}";
}
