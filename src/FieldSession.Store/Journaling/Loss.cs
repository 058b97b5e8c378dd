using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>Whether something is lost that no copy holds any more: then a person decides, not the program.</summary>
internal static class Loss
{
    /// <summary>What is lost; null: nothing.</summary>
    /// <param name="paths">The study's files.</param>
    /// <param name="finding">What was found in them.</param>
    /// <param name="textBytes">The text as it lies on disk; null: there is none.</param>
    public static StudyDamagedException? In(StudyPaths paths, Finding finding, byte[]? textBytes)
    {
        if (finding.Lines.Count == 0 && IsForeign(finding, textBytes))
        {
            return new StudyDamagedException(
                StudyFileWords.NoLineIsLeft(paths, Beside(paths, textBytes), finding.Store.Fault ?? StudyFileWords.HoldsNoJournal));
        }

        if (finding.Loose.Count > 0)
        {
            Line first = finding.Loose.MinBy(line => line.Number)!;
            return Damaged(paths, finding, StudyFileWords.LinesBeforeAreLost(first));
        }

        if (BadLinesAtEnd(finding) > 1)
        {
            return Damaged(paths, finding, StudyFileWords.MoreThanLastLineIsLost);
        }

        bool isTextToBeTrusted = textBytes is not null && finding.Text.IsSound;
        return !isTextToBeTrusted && finding.Store.HighestPlace > finding.Lines.Count
            ? Damaged(paths, finding, StudyFileWords.PlaceIsDamaged(finding))
            : null;
    }

    private static bool IsForeign(Finding finding, byte[]? textBytes) =>
        textBytes is null || finding.Text.Lines.Count > 0 || (textBytes.Length == 0 && finding.Store.HighestPlace > 0);

    // lines of the text after its last valid one, less those that the other copies supply
    private static int BadLinesAtEnd(Finding finding)
    {
        IReadOnlyList<Line?> text = finding.Text.Lines;
        int lastValid = text.Count - 1;
        while (lastValid >= 0 && text[lastValid] is null)
        {
            lastValid--;
        }

        if (lastValid < 0)
        {
            return text.Count - finding.Lines.Count;
        }

        string hash = text[lastValid]!.Hash;
        int supplied = finding.Lines.Reverse().TakeWhile(line => line.Hash != hash).Count();
        return text.Count - 1 - lastValid - supplied;
    }

    private static StudyDamagedException Damaged(StudyPaths paths, Finding finding, string what)
    {
        int firstBad = finding.Text.Lines.ToList().IndexOf(null) + 1;
        string where = firstBad > 0 ? $"{paths.Journal}, line {firstBad}" : paths.Study;
        return new StudyDamagedException(
            StudyFileWords.StudyIsDamaged(where, what, finding, paths));
    }

    private static string Beside(StudyPaths paths, byte[]? textBytes) =>
        textBytes is null ? StudyFileWords.JournalIsNotBesideIt(paths) : StudyFileWords.NorInJournal(paths);
}
