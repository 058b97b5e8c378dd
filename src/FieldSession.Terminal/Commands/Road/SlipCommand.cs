using System.CommandLine;
using FieldSession.Rating;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'slip': prints the order of a set's trials for whoever runs them, once the journal knows who that is.</summary>
internal static class SlipCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> person = new("--for")
        {
            Description = "who runs the trials, and chooses in none of them",
            HelpName = "NAME",
            Required = true,
        };
        Option<int?> set = new("--set") { Description = "number of the set; default: the first that is open", HelpName = "N" };
        Command command = new("slip", "prints the order of a set of forced choices for whoever runs the trials") { study, person, set };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(person), typed.GetValue(set), outside));
        return command;
    }

    /// <summary>Writes down who is shown the order, then prints it.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string path, string person, int? asked, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.At(path, outside);
        if (SlipText.SetFor(opened.Logbook.Study, asked) is not { } number)
        {
            outside.Error.WriteLine(CommandWords.NoTrialsYet(ExampleNames.In(opened.Logbook.Study)));
            return ExitCode.No;
        }

        ChoiceSet? known = opened.Logbook.Study.ChoiceSets.Find(set => set.Number == number && set.IsRunBy(person));
        if (known is null && opened.Logbook.Write(new SlipTaken(number, person)) is { IsWritten: false } refused)
        {
            outside.Error.WriteLine(ShellWords.NotWritten(refused));
            return ExitCode.No;
        }

        foreach (string row in OrderSlip.Rows(opened.Logbook.Study.ChoiceSets[number - 1], fromTrial: 1))
        {
            outside.Output.WriteLine(row);
        }

        return ExitCode.Done;
    }
}
