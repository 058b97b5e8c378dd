namespace FieldSession.Store.Journaling;

/// <summary>
/// What could be saved of a study of which lines are lost in both copies. The damaged files were read only: they stay as they are,
/// and may lie where nothing can be written.
/// </summary>
/// <param name="Path">The new study's LiteDB file.</param>
/// <param name="Lines">How many lines it holds: of each strand, the longest chain that holds from its first line.</param>
/// <param name="LooseLines">How many lines are whole but are behind a lost one, so that no chain reaches them.</param>
/// <param name="LooseFile">Where those are kept as text, to be read and typed in again; null: there are none.</param>
public sealed record StudyRescue(string Path, int Lines, int LooseLines, string? LooseFile)
{
    /// <summary>Saves the lines that are whole as a new study.</summary>
    /// <param name="path">The damaged study's LiteDB file; either copy may be missing.</param>
    /// <param name="newPath">The new study's LiteDB file, in a folder that is there.</param>
    /// <param name="clock">The time.</param>
    /// <exception cref="StudyMissingException">Neither of the damaged files is there, or no folder for the new one.</exception>
    /// <exception cref="StudyExistsException">A file lies in the new study's place.</exception>
    /// <exception cref="StudyDamagedException">No line is whole.</exception>
    /// <exception cref="TwoHistoriesException">The copies contradict each other; a person has to choose one first.</exception>
    /// <exception cref="StudyUnwritableException">The new study's folder may not be written to.</exception>
    /// <exception cref="StudyNameException">A name is that of a journal.</exception>
    public static StudyRescue Of(string path, string newPath, TimeProvider clock) =>
        Of(new Disk(), StudyPaths.Of(path), StudyPaths.Of(newPath), clock);

    internal static StudyRescue Of(IDisk disk, StudyPaths damaged, StudyPaths target, TimeProvider clock)
    {
        FoundStudy found = Refusal.Of(damaged.Study, () => Found(disk, damaged));
        return Refusal.Of(target.Study, () => Written(disk, target, found, clock));
    }

    private static FoundStudy Found(IDisk disk, StudyPaths damaged)
    {
        if (!new[] { damaged.Journal, damaged.Study, damaged.Rescue }.Any(disk.Exists))
        {
            throw new StudyMissingException(StudyFileWords.NoStudyHere(damaged));
        }

        FoundStudy found = FoundStudy.Of(disk, damaged, disk.Exists(damaged.Journal) ? disk.ReadAll(damaged.Journal) : null);
        return found.Lines.Count > 0 ? found : throw new StudyDamagedException(HealingWords.NothingToRescue(damaged));
    }

    private static StudyRescue Written(IDisk disk, StudyPaths target, FoundStudy found, TimeProvider clock)
    {
        string loose = System.IO.Path.ChangeExtension(target.Study, ".loose");
        if (new[] { target.Study, target.Journal, target.Log, target.Rescue, loose }.FirstOrDefault(disk.Exists) is { } taken)
        {
            throw new StudyExistsException(HealingWords.RescueNameIsTaken(taken));
        }

        if (found.Loose.Count > 0)
        {
            WholeFile.Write(disk, loose, TextFile.BytesOf(found.Loose));
        }

        WholeFile.Write(disk, target.Journal, TextFile.BytesOf(found.Lines));
        // opening makes the other copy
        using StudyFile study = new StudyOpening(disk, target, clock).Open();
        return new StudyRescue(target.Study, study.Lines.Count, found.Loose.Count, found.Loose.Count > 0 ? loose : null);
    }
}
