using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>A glance at a study from outside: it reads the plain text, locks nothing and changes nothing.</summary>
public static class StudyGlance
{
    /// <summary>The lines of a study that are valid, in order; while somebody writes, the newest may be missing.</summary>
    /// <param name="path">The study's LiteDB file.</param>
    /// <exception cref="StudyMissingException">There is no study.</exception>
    /// <exception cref="StudyInUseException">On Windows: the study is open.</exception>
    /// <exception cref="StudyUnwritableException">The file may not be read.</exception>
    /// <exception cref="StudyNameException">The name is that of a journal.</exception>
    public static IReadOnlyList<Line> LinesOf(string path)
    {
        StudyPaths paths = StudyPaths.Of(path);
        Disk disk = new();
        return Refusal.Of<IReadOnlyList<Line>>(
            paths.Study,
            () =>
                disk.Exists(paths.Journal)
                    ? [.. TextCopy.Read(disk.ReadAll(paths.Journal)).Valid]
                    : throw new StudyMissingException(StudyFileWords.NoStudyHere(paths))
        );
    }
}
