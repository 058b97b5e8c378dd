using FieldSession.Journal;

namespace FieldSession.Terminal.Commands;

/// <summary>How a command answers for one act.</summary>
internal static class Answer
{
    /// <summary>Says what came of an act, and gives the exit code that fits it.</summary>
    public static int To(Outcome outcome, Surroundings outside)
    {
        if (outcome.Echo is { } echo)
        {
            outside.Output.WriteLine(echo.Words);
        }
        else
        {
            outside.Error.WriteLine(ShellWords.NotWritten(outcome));
        }

        return ExitCode.Of(outcome);
    }
}
