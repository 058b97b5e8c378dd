using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>A copy of a study in another folder.</summary>
internal sealed class StudyBackup(IDisk disk, StudyPaths target)
{
    /// <summary>Writes both files. The text comes first: with it alone the copy is whole.</summary>
    /// <param name="text">The text's bytes.</param>
    /// <param name="pages">The LiteDB file's bytes; null: it is behind, and an older one there is removed.</param>
    public void Write(byte[] text, byte[]? pages)
    {
        _ = Refusal.Of(
            target.Study,
            () =>
            {
                RefuseOtherStudy(text);
                WholeFile.Write(disk, target.Journal, text);
                // an old log beside new pages would be replayed into them
                disk.Delete(target.Log);
                disk.Delete(target.Study);
                if (pages is not null)
                {
                    WholeFile.Write(disk, target.Study, pages);
                }

                return true;
            }
        );
    }

    private void RefuseOtherStudy(byte[] text)
    {
        bool isFree = !disk.Exists(target.Journal) && !disk.Exists(target.Study);
        bool isOlderCopy = disk.Exists(target.Journal) && text.AsSpan().StartsWith(disk.ReadAll(target.Journal)) && IsStoreOlder(text);
        if (!isOlderCopy && !isFree)
        {
            throw new StudyExistsException(StudyFileWords.OtherStateLiesThere(target));
        }
    }

    // each of the two files may have been put there by hand; one that a pulled stick left torn is ours as far as it can be read
    private bool IsStoreOlder(byte[] text)
    {
        IReadOnlyList<Line?> lines = TextCopy.Read(text).Lines;
        StoreCopy there = StoreCopy.Read(disk, target, lines);
        return there.Lines.Count == 0 ? there.Fault is null : there.Lines.All(new HashSet<Line?>(lines).Contains);
    }
}
