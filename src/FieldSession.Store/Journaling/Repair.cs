using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// Brings both files up to what was found. Whatever is not simply continued is kept beside it under its own name with
/// the time of the damage's finding. While the text is being written again, a third file holds every line.
/// </summary>
internal sealed class Repair(IDisk disk, StudyPaths paths, TimeProvider clock)
{
    // longer than any line of the job: more than a line's tail has come there
    private const int LongestTailBytes = 4096;

    private readonly List<string> _done = [];

    /// <summary>What was done, in words; empty: nothing was wrong.</summary>
    public IReadOnlyList<string> Done => _done;

    /// <summary>Makes the text whole and opens it for writing.</summary>
    public TextFile RepairText(IDiskFile file, byte[] bytes, Finding finding)
    {
        SetAside(bytes, finding);
        if (!finding.IsTextWhole)
        {
            WholeFile.Write(disk, paths.Rescue, TextFile.BytesOf(finding.Lines));
        }

        TextFile text = Continued(file, finding);
        disk.Delete(paths.Rescue);
        return text;
    }

    /// <summary>Puts a damaged or stray LiteDB file aside, so that a new one can grow in its place.</summary>
    public void ClearStore(Finding finding)
    {
        if (!finding.IsStoreLeading)
        {
            ClearStore(finding.Store.Fault ?? StudyFileWords.StoreHoldsOtherLines);
        }
    }

    /// <summary>Puts the LiteDB file aside, so that a new one can grow in its place.</summary>
    public void ClearStore(string why)
    {
        string? study = KeepAside(paths.Study);
        string? log = KeepAside(paths.Log);
        disk.SyncFolderOf(paths.Study);
        string kept = string.Join(" and ", new[] { study, log }.OfType<string>());
        _done.Add(StudyFileWords.StoreIsMadeAgain(paths, why, kept));
    }

    /// <summary>Puts what a cut-off start left aside; of empty files nothing is kept.</summary>
    public void ClearStart()
    {
        foreach (string path in new[] { paths.Journal, paths.Study, paths.Log }.Where(disk.Exists))
        {
            if (disk.ReadAll(path).Length == 0)
            {
                disk.Delete(path);
            }
            else
            {
                _ = KeepAside(path);
            }
        }
    }

    /// <summary>Says that the LiteDB file is made up from the text.</summary>
    public void NoteGrowth(Finding finding)
    {
        if (finding.IsStoreLeading && finding.Store.Lines.Count < finding.Lines.Count)
        {
            _done.Add(StudyFileWords.StoreWasBehind(paths, finding));
        }
    }

    private void SetAside(byte[] bytes, Finding finding)
    {
        if (!finding.IsTextLeading || finding.Text.Tail.Length > LongestTailBytes)
        {
            string kept = KeepCopy(paths.Journal, bytes);
            _done.Add(StudyFileWords.JournalWasWrittenAgain(paths, kept));
        }
        else if (finding.Text.Tail.Length > 0)
        {
            _done.Add(StudyFileWords.HalfLineWasCutOff(paths, KeepCopy(paths.Journal, bytes)));
        }
        else if (bytes.Length > 0 && finding.Text.Lines.Count < finding.Lines.Count)
        {
            _done.Add(StudyFileWords.JournalWasShort(paths, finding, KeepCopy(paths.Journal, bytes)));
        }
        else if (finding.Text.Lines.Count < finding.Lines.Count)
        {
            _done.Add(StudyFileWords.JournalWasMissing(paths, finding));
        }
    }

    private TextFile Continued(IDiskFile file, Finding finding)
    {
        IReadOnlyList<Line> sound = finding.IsTextLeading ? [.. finding.Text.Valid.Take(finding.Text.Lines.Count)] : [];
        TextFile text = new(disk, paths.Journal, file, sound);
        if (file.Length != TextOnDisk.LengthOf(sound) || sound.Count < finding.Lines.Count)
        {
            text.Append([.. finding.Lines.Skip(sound.Count)]);
        }

        return text;
    }

    private string KeepCopy(string path, byte[] bytes)
    {
        string kept = FreeName(path);
        WholeFile.Write(disk, kept, bytes);
        return kept;
    }

    private string? KeepAside(string path)
    {
        if (!disk.Exists(path))
        {
            return null;
        }

        string kept = FreeName(path);
        disk.Move(path, kept);
        return kept;
    }

    private string FreeName(string path)
    {
        string stamped = string.Create(CultureInfo.InvariantCulture, $"{path}.damaged-{clock.GetUtcNow().UtcDateTime:yyyyMMdd'T'HHmmss'Z'}");
        return Enumerable.Range(1, int.MaxValue)
            .Select(i => i == 1 ? stamped : $"{stamped}-{i}")
            .First(name => !disk.Exists(name));
    }
}
