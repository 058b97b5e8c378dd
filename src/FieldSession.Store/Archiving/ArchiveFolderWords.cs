namespace FieldSession.Store.Archiving;

/// <summary>Why a study or a folder is left out of an archive.</summary>
internal static class ArchiveFolderWords
{
    public static string NoSuchFolder(string folder) => $"{folder}: there is no such folder. Give the folder that holds the finished studies.";

    public static string NothingInIt(string path) => $"{path}: left out: no line was ever written into it.";

    /// <summary>A study that is there several times: which file counts.</summary>
    public static string CountedOnce(StudyCopies<IndexedStudy> study) =>
        $"{study.Newest!.Stamp.Path}: study {study.Study.ShortHash} counts once; {(study.Others.Length == 1 ? $"{study.Others[0].Stamp.Path} is a copy or an earlier state of it" : $"{study.Others.Length} files are copies or earlier states of it")}.";

    /// <summary>A study whose copies no file has all lines of: which files, and the cure.</summary>
    public static string WentOnDifferently(StudyCopies<IndexedStudy> study) =>
        $"{string.Join(", ", study.Others.Select(copy => copy.Stamp.Path))}: copies of study {study.Study.ShortHash} that went on differently; it is left out. Merge one into the other first: fieldsession merge {study.Others[0].Stamp.Path} {study.Others[1].Stamp.Path}";
}
