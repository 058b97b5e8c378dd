using System.Globalization;
using System.Text.RegularExpressions;
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
internal sealed partial class Invariant(IReadOnlyList<Line> before)
{
    // docs and ExitCode: 0 to 3
    private const int MostCodes = 3;

    private static readonly string[] WordsOfNoCrew = ["Unhandled", "Exception", "   at ", "System.", "Tomlyn", "Serializer", "\u001b"];

    /// <summary>The lines of a study as they lie on the disk; empty: there is none.</summary>
    public static IReadOnlyList<Line> LinesOf(string study) =>
        File.Exists(study) || File.Exists(Path.ChangeExtension(study, ".journal")) ? JournalCheck.Of(study).LinesToFirstFailing : [];

    /// <summary>What a run that met a fault did not keep of this, a line each.</summary>
    public static IEnumerable<string> BrokenInWords(ProgramRun run, bool wasKilled, bool mayName, bool canSpeak = true) =>
        [
            .. run.Code is null ? ["it does not end"] : Array.Empty<string>(),
            .. run.Code > MostCodes && !wasKilled ? [$"it crashed with {run.Code}"] : Array.Empty<string>(),
            .. WordsOfNoCrew.Where(word => run.Said.Contains(word, StringComparison.Ordinal)).Select(word => $"it said '{word}'"),
            .. canSpeak ? WithoutAWord(run) : [],
            .. !mayName && run.Said.Contains(Stages.HiddenName, StringComparison.Ordinal) ? ["it named a spec"] : Array.Empty<string>(),
        ];

    /// <summary>What the study on the disk does not keep of it.</summary>
    /// <param name="after">The study's lines, the study opened again and closed.</param>
    /// <param name="typed">What was typed, line by line.</param>
    /// <param name="answers">What was answered, as far as it came.</param>
    /// <param name="said">Everything that was said.</param>
    /// <param name="mayCome">Whether a line may be there that nobody typed.</param>
    public IEnumerable<string> BrokenInStudy(
        IReadOnlyList<Line> after,
        string[] typed,
        string[] answers,
        string said,
        Func<Line, bool> mayCome
    )
    {
        string[] stored = [.. after.Skip(before.Count).Where(line => !mayCome(line)).Select(line => $"{EntryKinds.EntryIn(line)}")];
        HashSet<string> asked = [.. typed.Select(Meant)];
        string told = string.Join('\n', [said, .. answers]);
        (string Answer, string Typed)[] pairs = [.. answers.Zip(typed)];
        return
        [
            .. KeptOfBefore(after),
            .. stored.Where(line => !asked.Contains(line)).Select(foreign => $"FOREIGN: {foreign}"),
            .. from pair in pairs
            where
                pair.Answer.StartsWith("ok ", StringComparison.Ordinal)
                && !IsThere(after, pair.Answer, pair.Typed)
                && !IsTold(told, pair.Answer)
            select $"LOST: '{pair.Typed}' was answered '{pair.Answer}'",
            .. from pair in pairs
            where pair.Answer.StartsWith("no ", StringComparison.Ordinal) && pair.Answer.Contains("not saved", StringComparison.Ordinal)
            where stored.Contains(Meant(pair.Typed))
            select $"STORED: '{pair.Typed}' was answered '{pair.Answer}'",
        ];
    }

    private static string[] WithoutAWord(ProgramRun run) =>
        run.Code is > 0 and <= MostCodes && string.IsNullOrWhiteSpace(run.Said) ? [$"it ended with {run.Code} without a word"] : [];

    private IEnumerable<string> KeptOfBefore(IReadOnlyList<Line> after) =>
        before.Select(line => line.Hash).SequenceEqual(after.Take(before.Count).Select(line => line.Hash))
            ? []
            : [$"LOST: of {before.Count} earlier lines {after.Count} are left or others stand in their places"];

    private static bool IsThere(IReadOnlyList<Line> after, string answer, string typed) =>
        NumberIn(answer) is var number && number <= after.Count && $"{EntryKinds.EntryIn(after[number - 1])}" == Meant(typed);

    // the words of a refusal: 'The disk also lost line 7 and what follows'
    private static bool IsTold(string said, string answer) =>
        LostLine().Matches(said).Any(told => int.Parse(told.Groups[1].ValueSpan, CultureInfo.InvariantCulture) <= NumberIn(answer));

    [GeneratedRegex(@"also lost line (\d+)")]
    private static partial Regex LostLine();

    private static string Meant(string typed) => $"{EntryText.Parse(typed, Study.Empty).Entry}";

    private static int NumberIn(string answer) => int.Parse(answer.Split(' ')[1].TrimEnd(':'), CultureInfo.InvariantCulture);
}
