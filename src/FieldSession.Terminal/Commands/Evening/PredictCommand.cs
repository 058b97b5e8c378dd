using System.Collections.Immutable;
using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Predicting;
using FieldSession.State;
using FieldSession.Terminal.Screens.Predicting;

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
            if (Asked(member.Name, logbook.Study, outside) is not { } prediction)
            {
                return ExitCode.No;
            }

            Outcome outcome = prediction.Entry is { } entry ? logbook.Write(entry) : Outcome.Refused(prediction.Objection!);
            int code = Answer.To(outcome, outside);
            if (code != ExitCode.Done)
            {
                return code;
            }
        }

        return ExitCode.Done;
    }

    // the questions of the screen but the last, for words of one's own; each answer is checked before the next question is asked
    private static Parsed? Asked(string name, Study study, Surroundings outside)
    {
        ImmutableArray<Question> questions = Question.Of(study);
        PredictionSoFar telling = new(name, []);
        while (telling.Open(questions) is { Word.Length: > 0 } question)
        {
            if (outside.Ask(InOneLine(question)) is not { } typed)
            {
                return null;
            }

            if (question.ValueOf(typed.Trim()) is { } value)
            {
                telling = telling with { Answers = telling.Answers.Add(value) };
            }
            else
            {
                outside.Error.WriteLine(question.Objection(typed.Trim()));
            }
        }

        return (telling with { Answers = telling.Answers.Add("") }).Fact(questions, study);
    }

    private static string InOneLine(Question question)
    {
        string[] parts =
        [
            string.Join(", ", question.Choices.Select(choice => choice.Key == choice.Words ? choice.Key : $"{choice.Key} {choice.Words}")),
            question.MayBePercent ? PredictScreenWords.OrPerCent : "",
            question.MayBeEmpty ? PredictScreenWords.EnterIsNoOpinion.Trim() : "",
        ];
        return $"{question.Words} ({string.Join("; ", parts.Where(part => part.Length > 0))}) ";
    }
}
