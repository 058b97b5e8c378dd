using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Sealing;

/// <summary>Where the custodian's list may be written: nowhere near a study.</summary>
public static class SecretPlace
{
    private static string[] StudyFiles => ["*.study", "*.journal"];

    /// <summary>What rules out writing who is who into a file; null: nothing.</summary>
    /// <param name="path">The file.</param>
    /// <param name="studyName">The study that the list is of.</param>
    public static Objection? ObjectionTo(string path, string studyName)
    {
        DirectoryInfo? folder = new FileInfo(Path.GetFullPath(path)).Directory;
        if (folder is null || !folder.Exists)
        {
            return null;
        }

        if (Studies(folder).FirstOrDefault() is { } beside)
        {
            return new Objection(KeyFileWords.StudyLiesBeside(beside), KeyFileWords.NameFolderAwayFromStudy);
        }

        for (DirectoryInfo? above = folder.Parent; above is not null; above = above.Parent)
        {
            if (Studies(above).FirstOrDefault(study => IsOf(study, studyName)) is { } inside)
            {
                return new Objection(KeyFileWords.StudyLiesAbove(inside), KeyFileWords.NameFolderAwayFromStudy);
            }
        }

        return null;
    }

    private static IEnumerable<string> Studies(DirectoryInfo folder)
    {
        try
        {
            return [.. StudyFiles.SelectMany(pattern => folder.EnumerateFiles(pattern)).Select(file => file.FullName)];
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool IsOf(string path, string studyName)
    {
        try
        {
            Study study = Logbook.Fold(StudyGlance.LinesOf(Path.ChangeExtension(path, ".study")));
            return study.Plan?.StudyName == studyName;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return false;
        }
    }
}
