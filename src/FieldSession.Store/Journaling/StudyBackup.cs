namespace FieldSession.Store.Journaling;

/// <summary>A copy of a study in another folder.</summary>
internal sealed class StudyBackup(IDisk disk, StudyPaths target)
{
    /// <summary>Writes both files. The text comes first: with it alone the copy is whole.</summary>
    /// <param name="text">The text's bytes.</param>
    /// <param name="pages">The LiteDB file's bytes; null: it is behind, and an older one there is removed.</param>
    public void Write(byte[] text, byte[]? pages)
    {
        _ = Refusal.Of(target.Study, () =>
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
        });
    }

    private void RefuseOtherStudy(byte[] text)
    {
        bool isOlderCopy = disk.Exists(target.Journal) && text.AsSpan().StartsWith(disk.ReadAll(target.Journal));
        bool isFree = !disk.Exists(target.Journal) && !disk.Exists(target.Study);
        if (!isOlderCopy && !isFree)
        {
            throw new StudyExistsException(
                StudyFileWords.OtherStateLiesThere(target));
        }
    }
}
