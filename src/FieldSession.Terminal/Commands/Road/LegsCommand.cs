using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'legs': the legs of energy days from a CSV, each row one act, answered like entry lines.</summary>
internal static class LegsCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Argument<string> file = new("FILE.csv") { Description = "the legs, one a row; columns: 'fieldsession help files'" };
        Command command = new("legs", "takes the legs of energy days from a CSV, each row one act") { study, file };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside);
            return Run(opened.Logbook, typed.GetRequiredValue(file), outside);
        });
        return command;
    }

    /// <summary>Takes the rows of a file; nothing is taken from a file with anything wrong in it.</summary>
    /// <returns>0; 1 where a row was refused; 2 where the file is wrong; 3 where a row could not be saved.</returns>
    public static int Run(Logbook logbook, string path, Surroundings outside)
    {
        try
        {
            FileRead<IReadOnlyList<LegRow>> read = LegsCsv.Read(path, logbook.Study.Plan);
            foreach (string problem in read.ProblemLines())
            {
                outside.Error.WriteLine(problem);
            }

            return read.Content is { } rows ? rows.Max(row => Take(row, logbook, outside)) : ExitCode.Wrong;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine($"{path}: there is no such file that can be read; give a CSV of legs; nothing was changed");
            return ExitCode.Wrong;
        }
    }

    private static int Take(LegRow row, Logbook logbook, Surroundings outside)
    {
        Outcome outcome = logbook.Write(row.Leg);
        outside.Output.WriteLine(EnterCommand.InWords(outcome, row.Line));
        outside.Output.Flush();
        return ExitCode.Of(outcome);
    }
}
