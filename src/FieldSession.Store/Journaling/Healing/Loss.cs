using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>Whether something is lost that no copy holds any more: then a person decides, not the program.</summary>
internal static class Loss
{
    /// <summary>What is lost; null: nothing.</summary>
    /// <param name="paths">The study's files.</param>
    /// <param name="found">What was found in them.</param>
    /// <param name="textBytes">The text as it lies on disk; null: there is none.</param>
    public static StudyDamagedException? In(StudyPaths paths, FoundStudy found, byte[]? textBytes)
    {
        if (found.Lines.Count == 0 && IsForeign(found, textBytes))
        {
            return new StudyDamagedException(
                HealingWords.NoLineIsLeft(paths, Beside(paths, textBytes), found.Store.Fault ?? HealingWords.HoldsNoJournal)
            );
        }

        if (found.Loose.Count > 0)
        {
            Line first = found.Loose.MinBy(line => line.Number)!;
            return Damaged(paths, found, HealingWords.LinesBeforeAreLost(first));
        }

        if (BadLinesAtEnd(found) > 1)
        {
            return Damaged(paths, found, HealingWords.MoreThanLastLineIsLost);
        }

        bool isTextToBeTrusted = textBytes is not null && found.Text.IsSound;
        return !isTextToBeTrusted && found.Store.HighestPlace > found.Lines.Count
            ? Damaged(paths, found, HealingWords.PlaceIsDamaged(found))
            : null;
    }

    private static bool IsForeign(FoundStudy found, byte[]? textBytes) =>
        textBytes is null || found.Text.Lines.Count > 0 || (textBytes.Length == 0 && found.Store.HighestPlace > 0);

    // lines of the text after its last valid one, less those that the other copies supply
    private static int BadLinesAtEnd(FoundStudy found)
    {
        IReadOnlyList<Line?> text = found.Text.Lines;
        int lastValid = text.Count - 1;
        while (lastValid >= 0 && text[lastValid] is null)
        {
            lastValid--;
        }

        if (lastValid < 0)
        {
            return text.Count - found.Lines.Count;
        }

        string hash = text[lastValid]!.Hash;
        int supplied = found.Lines.Reverse().TakeWhile(line => line.Hash != hash).Count();
        return text.Count - 1 - lastValid - supplied;
    }

    private static StudyDamagedException Damaged(StudyPaths paths, FoundStudy found, string what)
    {
        int firstBad = found.Text.Lines.ToList().IndexOf(null) + 1;
        string where = firstBad > 0 ? $"{paths.Journal}, line {firstBad}" : paths.Study;
        return new StudyDamagedException(HealingWords.StudyIsDamaged(where, what, found, paths));
    }

    private static string Beside(StudyPaths paths, byte[]? textBytes) =>
        textBytes is null ? HealingWords.JournalIsNotBesideIt(paths) : HealingWords.NorInJournal(paths);
}
