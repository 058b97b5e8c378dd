using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// Brings both files up to what was found. Whatever is not simply continued is kept beside it under its own name with
/// the time of the damage's found. While the text is being written again, a third file holds every line.
/// </summary>
internal sealed class Repair(IDisk disk, StudyPaths paths, TimeProvider clock)
{
    // longer than any line of the job: more than a line's tail has come there
    private const int LongestTailBytes = 4096;

    private readonly List<string> _done = [];

    /// <summary>What was done, in words; empty: nothing was wrong.</summary>
    public IReadOnlyList<string> Done => _done;

    /// <summary>Makes the text whole and opens it for writing.</summary>
    public TextFile RepairText(IDiskFile file, byte[] bytes, FoundStudy found)
    {
        SetAside(bytes, found);
        if (!found.IsTextWhole)
        {
            WholeFile.Write(disk, paths.Rescue, TextFile.BytesOf(found.Lines));
        }

        TextFile text = Continued(file, found);
        disk.Delete(paths.Rescue);
        return text;
    }

    /// <summary>Puts a damaged or stray LiteDB file aside, so that a new one can grow in its place.</summary>
    public void ClearStore(FoundStudy found)
    {
        if (!found.IsStoreLeading)
        {
            ClearStore(found.Store.Fault ?? SecondCopyWords.StoreHoldsOtherLines);
        }
    }

    /// <summary>Puts the LiteDB file aside, so that a new one can grow in its place.</summary>
    public void ClearStore(string why)
    {
        string? study = KeepAside(paths.Study);
        string? log = KeepAside(paths.Log);
        disk.SyncFolderOf(paths.Study);
        string kept = string.Join(" and ", new[] { study, log }.OfType<string>());
        _done.Add(HealingWords.StoreIsMadeAgain(paths, why, kept));
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
    public void NoteGrowth(FoundStudy found)
    {
        if (found.IsStoreLeading && found.Store.Lines.Count < found.Lines.Count)
        {
            _done.Add(HealingWords.StoreWasBehind(paths, found));
        }
    }

    private void SetAside(byte[] bytes, FoundStudy found)
    {
        if (!found.IsTextLeading || found.Text.Tail.Length > LongestTailBytes)
        {
            string kept = KeepCopy(paths.Journal, bytes);
            _done.Add(HealingWords.JournalWasWrittenAgain(paths, kept));
        }
        else if (found.Text.Tail.Length > 0)
        {
            _done.Add(HealingWords.HalfLineWasCutOff(paths, KeepCopy(paths.Journal, bytes)));
        }
        else if (bytes.Length > 0 && found.Text.Lines.Count < found.Lines.Count)
        {
            _done.Add(HealingWords.JournalWasShort(paths, found, KeepCopy(paths.Journal, bytes)));
        }
        else if (found.Text.Lines.Count < found.Lines.Count)
        {
            _done.Add(HealingWords.JournalWasMissing(paths, found));
        }
    }

    private TextFile Continued(IDiskFile file, FoundStudy found)
    {
        IReadOnlyList<Line> sound = found.IsTextLeading ? [.. found.Text.Valid.Take(found.Text.Lines.Count)] : [];
        TextFile text = new(disk, paths.Journal, file, sound);
        if (file.Length != TextOnDisk.LengthOf(sound) || sound.Count < found.Lines.Count)
        {
            text.Append([.. found.Lines.Skip(sound.Count)]);
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
        string stamped = string.Create(
            CultureInfo.InvariantCulture,
            $"{path}.damaged-{clock.GetUtcNow().UtcDateTime:yyyyMMdd'T'HHmmss'Z'}"
        );
        return Enumerable.Range(1, int.MaxValue).Select(i => i == 1 ? stamped : $"{stamped}-{i}").First(name => !disk.Exists(name));
    }
}

/// <summary>
/// What a power cut or a failing disk leaves of a study that was being made: no whole line of text, and no line in the LiteDB file. Nothing
/// of it was acknowledged, so the study can be made again in its place.
/// </summary>
internal sealed class StartCutOff(IDisk disk, StudyPaths paths)
{
    // a LiteDB file without a text beside it may be another program's as soon as there is more in it than its head
    private const int FreshStoreBytes = StudyHeader.PageSize;

    private const string HexDigits = "0123456789abcdef";

    /// <summary>Whether such remains lie under the study's names, and nothing else.</summary>
    public bool IsHere => new[] { paths.Journal, paths.Study, paths.Log }.Any(disk.Exists) && IsTextWithoutLine() && IsStoreWithoutLine();

    // the first digits of a line, or the zeros that a file system shows where bytes never came; behind such a gap the end of the line may
    // have come
    private bool IsTextWithoutLine()
    {
        byte[] bytes = disk.Exists(paths.Journal) ? disk.ReadAll(paths.Journal) : [];
        TextCopy text = TextCopy.Read(bytes);
        bool isGap = IsZeros(bytes) || bytes[0] == 0;
        return !text.Valid.Any() && (isGap || (text.Lines.Count == 0 && HexDigits.Contains((char)bytes[0], StringComparison.Ordinal)));
    }

    private bool IsStoreWithoutLine()
    {
        byte[] pages = disk.Exists(paths.Study) ? disk.ReadAll(paths.Study) : [];
        bool isOurs =
            IsZeros(pages) || (StudyHeader.FaultIn(pages) is null && (disk.Exists(paths.Journal) || pages.Length <= FreshStoreBytes));
        if (!isOurs)
        {
            return false;
        }

        StoreCopy store = StoreCopy.Read(disk, paths, []);
        return store.Lines.Count == 0 && store.HighestPlace <= 1;
    }

    private static bool IsZeros(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExcept((byte)0);
}
