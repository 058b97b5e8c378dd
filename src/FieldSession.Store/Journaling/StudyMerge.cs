using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What another laptop's file brought.</summary>
/// <param name="File">The file, as it was named.</param>
/// <param name="Strands">How many lines of which strand were new; empty: nothing was.</param>
public sealed record MergedFile(string File, IReadOnlyList<(string Strand, int Lines)> Strands);

/// <summary>What a merge came to.</summary>
/// <param name="Files">What each file brought.</param>
/// <param name="Lines">Every line of the study now.</param>
public sealed record MergedStudy(IReadOnlyList<MergedFile> Files, IReadOnlyList<Line> Lines);

/// <summary>
/// Takes the strands of other laptops into a study. The result is the union of all lines, so the order in which files are
/// merged, and how often, makes no difference. The other files are read only, as they lie there, on a stick or a shared folder.
/// </summary>
public static class StudyMerge
{
    /// <summary>Takes in what is new. All files are read and checked before anything is written.</summary>
    /// <param name="study">The study, just opened.</param>
    /// <param name="others">The other laptops' study files.</param>
    /// <exception cref="StudyMissingException">There is no study at a path.</exception>
    /// <exception cref="OtherStudyException">A file is of another study.</exception>
    /// <exception cref="TwoHistoriesException">One strand goes on differently in two files.</exception>
    /// <exception cref="StudyDamagedException">Lines of a file are lost in both of its copies.</exception>
    /// <exception cref="LineNotSafeException">The disk would not take the lines; nothing was added.</exception>
    public static MergedStudy Into(StudyFile study, IEnumerable<string> others)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(others);
        Dictionary<(string Strand, int Number), Line> known = study.Lines.ToDictionary(line => (line.Strand, line.Number));
        List<Line> added = [];
        List<MergedFile> files = [];
        foreach (string path in others)
        {
            IReadOnlyList<Line> lines = ReadStudy.At(path).Lines;
            RefuseOtherStudy(study, path, lines);
            List<Line> fresh = [.. lines.Where(line => IsNew(line, known, path))];
            foreach (Line line in fresh)
            {
                known.Add((line.Strand, line.Number), line);
            }

            added.AddRange(fresh);
            files.Add(
                new MergedFile(
                    path,
                    [
                        .. fresh
                            .GroupBy(line => line.Strand)
                            .Select(strand => (strand.Key, strand.Count()))
                            .OrderBy(s => s.Key, StringComparer.Ordinal),
                    ]
                )
            );
        }

        study.AppendAll(added);
        return new MergedStudy(files, [.. study.Lines, .. added]);
    }

    private static void RefuseOtherStudy(StudyFile study, string path, IReadOnlyList<Line> lines)
    {
        if (StudyState.IdentityOf(study.Lines) != StudyState.IdentityOf(lines))
        {
            throw new OtherStudyException(StudyFileWords.CopyIsOfAnotherStudy(path, study.Path));
        }
    }

    private static bool IsNew(Line line, Dictionary<(string Strand, int Number), Line> known, string path)
    {
        if (!known.TryGetValue((line.Strand, line.Number), out Line? there))
        {
            return true;
        }

        return there.Hash == line.Hash ? false : throw new TwoHistoriesException(StudyFileWords.StrandHasTwoHistories(path, line));
    }
}
