using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The command 'verify': checks every hash of both copies and the rules of the blind without changing anything, prints the
/// head hash, and proves that a line whose hash was noted on paper is still there.
/// </summary>
internal static class VerifyCommand
{
    /// <summary>Fewest digits of a noted hash that are taken: 64 bit, beyond what anybody could hit on purpose.</summary>
    public const int FewestDigits = 16;

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string?> head = new("--head")
        {
            Description = "a head hash noted earlier, or at least its first 16 digits: says whether its line is still there, and where",
            HelpName = "HASH",
        };
        Command command = new("verify", "checks every hash of the journal, commitment and freeze, and prints the head hash")
        {
            study,
            head,
        };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetValue(head), outside));
        return command;
    }

    /// <summary>Checks both copies of the journal.</summary>
    /// <returns>0 where all holds; 1 where something does not; 2 where the hash is none.</returns>
    public static int Run(string path, string? head, Surroundings outside)
    {
        string? noted = head?.Trim().ToLowerInvariant();
        if (noted is not null && !IsHash(noted))
        {
            outside.Error.WriteLine(
                $"--head {head}: not a hash; give the 64 hex digits that were noted, or at least the first {FewestDigits}"
            );
            return ExitCode.Wrong;
        }

        JournalCheck check = JournalCheck.Of(path);
        Say(check.Text, outside);
        Say(check.Store, outside);
        if (check.FirstDifference is { } difference)
        {
            outside.Output.WriteLine($"line {difference}: the two copies differ");
        }

        outside.Output.WriteLine(Verdict(check));
        if (check.LinesToFirstFailing.Count == 0)
        {
            return ExitCode.No;
        }

        bool all =
            check.Holds
            & HoldsAcknowledged(path, check.LinesToFirstFailing, outside)
            & KeepsRules(check, outside)
            & (noted is null || IsThere(noted, check.LinesToFirstFailing, outside));
        return all ? ExitCode.Done : ExitCode.No;
    }

    private static bool HoldsAcknowledged(string path, IReadOnlyList<Line> lines, Surroundings outside)
    {
        IReadOnlyList<string> missing = StudyFile.AcknowledgedAndMissing(path, lines, outside.StateFolder);
        foreach (string sentence in missing)
        {
            outside.Output.WriteLine(sentence);
        }

        return missing.Count == 0;
    }

    private static string Verdict(JournalCheck check) =>
        check switch
        {
            { LinesToFirstFailing.Count: 0 } => CommandWords.NoLineToCheck,
            { Holds: true } => "the journal holds",
            _ => "the journal does NOT hold",
        };

    private static bool KeepsRules(JournalCheck check, Surroundings outside)
    {
        RuleBroken[] broken = [.. JournalRules.BrokenIn(check.LinesToFirstFailing)];
        foreach (RuleBroken one in broken)
        {
            outside.Output.WriteLine($"line {one.Line}: {one.Why}");
        }

        outside.Output.WriteLine(
            (broken.Length, check.Holds) switch
            {
                (0, true) => "entries, commitment and freeze hold",
                (0, false) => CommandWords.RulesHoldUpTo(check.LinesToFirstFailing.Count),
                _ => $"entries, commitment and freeze do NOT hold; line {broken[0].Line} fails first",
            }
        );
        return broken.Length == 0;
    }

    private static bool IsThere(string noted, IReadOnlyList<Line> lines, Surroundings outside)
    {
        int place = 1 + lines.Index().FirstOrDefault(line => line.Item.Hash.StartsWith(noted, StringComparison.Ordinal), (-1, null!)).Index;
        string words =
            place == 0
                ? "the noted hash is that of NO line: what it pinned was changed or cut off, or it belongs to another study"
                : $"the noted hash is that of line {place} of {lines.Count}, written {lines[place - 1].At:yyyy-MM-dd} "
                    + $"{lines[place - 1].At:t} UTC: this line and all before it are unchanged";
        outside.Output.WriteLine(words);
        return place > 0;
    }

    private static bool IsHash(string text) => text.Length is >= FewestDigits and <= 64 && text.All(char.IsAsciiHexDigit);

    private static void Say(CopyCheck copy, Surroundings outside)
    {
        string failing = copy.FirstFailing is { } line ? $"; line {line} fails: {copy.Why}" : "";
        outside.Output.WriteLine(copy.IsThere ? $"{copy.File}: {copy.LinesHolding} lines hold{failing}" : $"{copy.File}: not there");
        foreach (StrandHead head in copy.Heads.OrderBy(head => head.Strand, StringComparer.Ordinal))
        {
            outside.Output.WriteLine($"  strand {head.Strand}: {head.Lines} lines, head {head.Hash}");
        }
    }
}
