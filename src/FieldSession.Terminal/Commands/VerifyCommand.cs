using System.CommandLine;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'verify': checks every hash of both copies without changing anything, and prints the head hash.</summary>
internal static class VerifyCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Command command = new("verify", "checks every hash of the journal and prints its head hash") { study };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), outside));
        return command;
    }

    /// <summary>Checks both copies of the journal.</summary>
    /// <returns>0 where both hold; 1 where one does not.</returns>
    public static int Run(string path, Surroundings outside)
    {
        JournalCheck check = JournalCheck.Of(path);
        Say(check.Text, outside);
        Say(check.Store, outside);
        if (check.FirstDifference is { } difference)
        {
            outside.Output.WriteLine($"line {difference}: the two copies differ");
        }

        outside.Output.WriteLine(check.Holds ? "the journal holds" : "the journal does NOT hold");
        return check.Holds ? ExitCode.Done : ExitCode.No;
    }

    private static void Say(CopyCheck copy, Surroundings outside)
    {
        string failing = copy.FirstFailing is { } line ? $"; line {line} fails: {copy.Why}" : "";
        outside.Output.WriteLine(copy.IsThere ? $"{copy.File}: {copy.LinesHolding} lines hold{failing}" : $"{copy.File}: not there");
        foreach (StrandHead head in copy.Heads)
        {
            outside.Output.WriteLine($"  strand {head.Strand}: {head.Lines} lines, head {head.Hash}");
        }
    }
}
