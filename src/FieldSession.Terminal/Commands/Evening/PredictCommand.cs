using System.CommandLine;
using FieldSession.Predicting;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'predict': each member of the crew locks a prediction, alone, before the key is opened.</summary>
internal static class PredictCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string[]> answers = new("--lock")
        {
            Description =
                "a prediction in one line, such as 'Tam feature=862 sure=3 quieter=417 pay=no because=sound'; without it the "
                + "answers are asked for",
            HelpName = "WORDS",
        };
        Command command = new("predict", "locks the crew's predictions, one person at a time") { study, answers };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside);
            return Run(opened.Logbook, typed.GetValue(answers) ?? [], outside);
        });
        return command;
    }

    /// <summary>Locks the given predictions, or asks for those that are still open.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(Logbook logbook, IReadOnlyList<string> given, Surroundings outside)
    {
        int worst = ExitCode.Done;
        foreach (string words in given)
        {
            worst = Math.Max(worst, Answer.To(logbook.Write($"predict {words}"), outside));
        }

        return given.Count > 0 ? worst : AskAll(logbook, outside);
    }

    private static int AskAll(Logbook logbook, Surroundings outside)
    {
        if (logbook.Study.StillToPredict.Any() && PredictionLocked.ObjectionToDay(logbook.Study) is { } objection)
        {
            outside.Error.WriteLine(objection);
            return ExitCode.No;
        }

        foreach (CrewMember member in logbook.Study.StillToPredict.ToArray())
        {
            outside.Error.WriteLine($"{member.Name}, alone; the codes are {string.Join(", ", logbook.Study.Codes)}");
            if (Asked(member.Name, outside) is not { } words)
            {
                return ExitCode.No;
            }

            int code = Answer.To(logbook.Write(words), outside);
            if (code != ExitCode.Done)
            {
                return code;
            }
        }

        return ExitCode.Done;
    }

    private static string? Asked(string name, Surroundings outside)
    {
        (string Word, string Question)[] questions =
        [
            ("feature", "which code is the new spec? "),
            ("sure", "how sure, 1 (a guess) to 5 (certain), or per cent such as 80%? "),
            ("quieter", "which is quieter (Enter: no opinion)? "),
            ("pay", "would you pay for it, yes or no (Enter: no opinion)? "),
            ("because", "from the sound, from something seen, or a guess (sound, seen, guess)? "),
        ];
        string words = $"predict {name}";
        foreach ((string word, string question) in questions)
        {
            if (outside.Ask(question) is not { } answer)
            {
                return null;
            }

            words += answer.Trim().Length > 0 ? $" {word}={answer.Trim()}" : "";
        }

        return words;
    }
}
