using System.Globalization;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Tests.Faults;

/// <summary>
/// What holds whatever the disk does, in one place. What was answered 'ok' is there when the study is opened again, or the program
/// said that it is not. What was answered 'no' is not there. Nothing foreign is taken in. 'verify' is content only if all of that is
/// so. The program ends by itself, with words that a crew can read, and names nobody's spec before the reveal.
/// </summary>
/// <param name="before">The study's lines before the command; empty: there was no study.</param>
internal sealed class Invariant(IReadOnlyList<Line> before)
{
    private static readonly string[] WordsOfNoCrew = ["Unhandled", "Exception", "   at ", "System.", "Tomlyn", "Serializer", "\u001b"];

    /// <summary>The lines of a study as they lie on the disk; empty: there is none.</summary>
    public static IReadOnlyList<Line> LinesOf(string study) =>
        File.Exists(study) || File.Exists(Path.ChangeExtension(study, ".journal")) ? JournalCheck.Of(study).LinesToFirstFailing : [];

    /// <summary>What a run that met a fault did not keep of this, a line each.</summary>
    public static IEnumerable<string> BrokenInWords(ProgramRun run, bool wasKilled, bool mayName)
    {
        if (run.Code is null)
        {
            yield return "it does not end";
        }
        else if (run.Code > 3 && !wasKilled)
        {
            yield return $"it crashed with {run.Code}";
        }

        foreach (string word in WordsOfNoCrew.Where(word => run.Said.Contains(word, StringComparison.Ordinal)))
        {
            yield return $"it said '{word}'";
        }

        if (run.Code is > 0 and <= 3 && string.IsNullOrWhiteSpace(run.Said))
        {
            yield return $"it ended with {run.Code} without a word";
        }

        if (!mayName && run.Said.Contains(Stages.HiddenName, StringComparison.Ordinal))
        {
            yield return "it named a spec";
        }
    }

    /// <summary>What the study on the disk does not keep of it.</summary>
    /// <param name="after">The study's lines, the study opened again and closed.</param>
    /// <param name="typed">What was typed, line by line.</param>
    /// <param name="answers">What was answered, as far as it came.</param>
    /// <param name="said">Everything that was said.</param>
    /// <param name="mayCome">Whether a line may be there that nobody typed.</param>
    public IEnumerable<string> BrokenInStudy(IReadOnlyList<Line> after, string[] typed, string[] answers, string said, Func<Line, bool> mayCome)
    {
        if (!before.Select(line => line.Hash).SequenceEqual(after.Take(before.Count).Select(line => line.Hash)))
        {
            yield return $"LOST: of {before.Count} earlier lines {after.Count} are left or others stand in their places";
        }

        string[] stored = [.. after.Skip(before.Count).Where(line => !mayCome(line)).Select(line => $"{EntryKinds.EntryIn(line)}")];
        HashSet<string> asked = [.. typed.Select(Meant)];
        foreach (string foreign in stored.Where(line => !asked.Contains(line)))
        {
            yield return $"FOREIGN: {foreign}";
        }

        foreach ((string answer, string line) in answers.Zip(typed))
        {
            bool isThere = answer.StartsWith("ok ", StringComparison.Ordinal) && NumberIn(answer) is var number && number <= after.Count
                && $"{EntryKinds.EntryIn(after[number - 1])}" == Meant(line);
            bool isTold = said.Contains($"line {NumberIn(answer)} is lost", StringComparison.Ordinal);
            if (answer.StartsWith("ok ", StringComparison.Ordinal) && !isThere && !isTold)
            {
                yield return $"LOST: '{line}' was answered '{answer}'";
            }
            else if (answer.StartsWith("no ", StringComparison.Ordinal) && stored.Contains(Meant(line)) && answer.Contains("not saved", StringComparison.Ordinal))
            {
                yield return $"STORED: '{line}' was answered '{answer}'";
            }
        }
    }

    private static string Meant(string typed) => $"{EntryText.Parse(typed, Study.Empty).Entry}";

    private static int NumberIn(string answer) => int.Parse(answer.Split(' ')[1].TrimEnd(':'), CultureInfo.InvariantCulture);
}
