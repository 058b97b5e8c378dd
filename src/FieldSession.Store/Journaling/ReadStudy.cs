using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A study that is only read, from whichever of its copies holds its lines. Nothing is locked, repaired or written, so it may lie on a
/// medium that can only be read, or be open in another window at the same time.
/// </summary>
public sealed class ReadStudy : IJournal
{
    private readonly string _path;

    private ReadStudy(string path, IReadOnlyList<Line> lines, IReadOnlyList<string> remarks)
    {
        _path = path;
        Lines = lines;
        Remarks = remarks;
    }

    /// <inheritdoc/>
    public IReadOnlyList<Line> Lines { get; }

    /// <summary>What is wrong with one of the copies, a sentence each; empty: nothing.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>Reads a study.</summary>
    /// <param name="path">The study's LiteDB file; either copy may be missing.</param>
    /// <exception cref="StudyMissingException">Neither of the files is there.</exception>
    /// <exception cref="StudyDamagedException">It is no study, or lines are lost in both copies.</exception>
    /// <exception cref="TwoHistoriesException">The copies contradict each other.</exception>
    /// <exception cref="OtherStudyException">The copies are of two studies.</exception>
    /// <exception cref="StudyNameException">The name is that of a journal.</exception>
    /// <exception cref="StudyInUseException">On Windows: the study is open.</exception>
    /// <exception cref="StudyTooLargeException">A file is longer than a study may be.</exception>
    public static ReadStudy At(string path) => At(new Disk(), StudyPaths.Of(path));

    internal static ReadStudy At(IDisk disk, StudyPaths paths) =>
        Refusal.Of(
            paths.Study,
            () =>
            {
                if (!disk.Exists(paths.Study) && !disk.Exists(paths.Journal))
                {
                    throw new StudyMissingException(StudyFileWords.NoStudyToRead(paths));
                }

                (FoundStudy found, StudyDamagedException? loss) = Look(disk, paths);
                if (loss is not null || !found.IsWhole)
                {
                    // files read while they are written can look broken once
                    (found, loss) = Look(disk, paths);
                }

                return loss is null ? new ReadStudy(paths.Study, found.Lines, [.. RemarksOn(found, paths)]) : throw loss;
            }
        );

    /// <summary>Refuses: a study that is only read takes nothing.</summary>
    /// <exception cref="IOException">Always.</exception>
    public void Append(Line line) => throw new IOException(StudyFileWords.StudyIsOnlyRead(_path));

    /// <inheritdoc/>
    public void Dispose()
    {
        // nothing is open
    }

    private static (FoundStudy Found, StudyDamagedException? Loss) Look(IDisk disk, StudyPaths paths)
    {
        byte[]? text = disk.Exists(paths.Journal) ? disk.ReadAll(paths.Journal) : null;
        FoundStudy found = FoundStudy.Of(disk, paths, text);
        return (found, Loss.In(paths, found, text));
    }

    // a LiteDB file that is merely behind, and a last line that is being written, are how an open study looks
    private static IEnumerable<string> RemarksOn(FoundStudy found, StudyPaths paths)
    {
        if (!found.IsTextWhole)
        {
            yield return StudyFileWords.ReadFromOtherCopy(paths.Journal, found.Lines.Count);
        }

        if (!found.IsStoreLeading)
        {
            yield return StudyFileWords.ReadFromOtherCopy(paths.Study, found.Lines.Count);
        }
    }
}
