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
                $"{paths.Study}: no line of a study is in it{Beside(paths, textBytes)}: {finding.Store.Fault ?? "it holds no journal"}. Nothing was overwritten. Check the path.");
        }

        if (finding.Loose.Count > 0)
        {
            Line first = finding.Loose.MinBy(line => line.Number)!;
            return Damaged(paths, finding, $"lines before line {first.Number} of strand {first.Strand} are lost in both copies");
        }

        if (BadLinesAtEnd(finding) > 1)
        {
            return Damaged(paths, finding, "more than the last line of the text can't be read, and the study file does not hold those lines");
        }

        bool isTextToBeTrusted = textBytes is not null && finding.Text.IsSound;
        return !isTextToBeTrusted && finding.Store.HighestPlace > finding.Lines.Count
            ? Damaged(paths, finding, $"place {finding.Store.FaultAt} of the study file is damaged ({finding.Store.Fault}), and the text does not hold that line")
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
            $"{where}: {what}. {finding.Lines.Count} lines are whole. Nothing was overwritten. "
            + $"Bring back a copy of the study, or save the lines that are whole: 'fieldsession rescue {Path.GetFileName(paths.Study)} --out NEW'.");
    }

    private static string Beside(StudyPaths paths, byte[]? textBytes) =>
        textBytes is null ? $", and {Path.GetFileName(paths.Journal)} is not beside it" : $" nor in {Path.GetFileName(paths.Journal)}";
}
