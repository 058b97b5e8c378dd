using FieldSession.Journal;

namespace FieldSession.Terminal.Commands;

/// <summary>How a command answers for one act.</summary>
internal static class Answer
{
    /// <summary>Says what came of an act, and gives the exit code that fits it.</summary>
    public static int To(Outcome outcome, Surroundings outside)
    {
        if (outcome.NotSavedBecause is { } because)
        {
            outside.Error.WriteLine($"not saved: {because}");
            return ExitCode.Damaged;
        }

        if (outcome.Objection is { } objection)
        {
            outside.Error.WriteLine(objection);
            return ExitCode.No;
        }

        outside.Output.WriteLine(outcome.Echo!.Words);
        return ExitCode.Done;
    }
}
