using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'plan': opens the plan screen on a folder, which may still be empty.</summary>
internal static class PlanCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> folder = new("PLAN_DIR") { Description = "the plan folder; made where there is none" };
        Command command = new("plan", "opens the plan screen on a plan folder") { folder };
        command.SetAction(typed => Run(typed.GetRequiredValue(folder), outside));
        return command;
    }

    /// <summary>Opens the screen.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string folder, Surroundings outside)
    {
        // what is wrong with an archive would be written over the screen; 'orders' and 'start' say it
        Surroundings unheard = outside with
        {
            Error = TextWriter.Null,
        };
        return TerminalProgram.Run(
            new Desk
            {
                Logbook = Logbook.Open(new NoJournal(), outside.Clock, new string('0', 16)),
                Clock = outside.Clock,
                Palette = Palette.For(Environment.GetEnvironmentVariable("NO_COLOR")),
                PlanTable = new EditedPlan(
                    folder,
                    plan => ArchiveCommand.LentTo(folder, plan, unheard),
                    plan => ArchiveCommand.RoadOf(folder, plan, unheard)
                ),
            },
            ScreenName.Plan
        );
    }
}

/// <summary>The journal of no study: while a plan is made there is none, and nothing can be written into it.</summary>
internal sealed class NoJournal : IJournal
{
    /// <inheritdoc/>
    public IReadOnlyList<Line> Lines => [];

    /// <inheritdoc/>
    public void Append(Line line) => throw new IOException(CommandWords.NoStudyYet);

    /// <inheritdoc/>
    public void Dispose()
    {
        // nothing is open
    }
}
