using System.CommandLine;
using FieldSession.Reporting;
using FieldSession.Revealing;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'score': the predictions of one study or of several against chance, after their reveals.</summary>
internal static class ScoreCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string[]> studies = new("STUDY") { Description = "study files whose keys are open", Arity = ArgumentArity.OneOrMore };
        Command command = new("score", "the predictions of one study or several, scored together") { studies };
        command.SetAction(typed => Run(typed.GetRequiredValue(studies), outside));
        return command;
    }

    /// <summary>Scores the predictions of the studies together.</summary>
    /// <returns>0; 1 where a study can't be scored.</returns>
    public static int Run(IReadOnlyList<string> paths, Surroundings outside)
    {
        List<ScoredPrediction> scored = [];
        int code = ExitCode.Done;
        foreach (string path in paths.Distinct(StringComparer.Ordinal))
        {
            using OpenedStudy opened = OpenedStudy.ToRead(path, outside);
            ScoredPrediction[] own = [.. PredictionScores.In(opened.Logbook.Study, OpenedKey.In(opened.Logbook.Entries))];
            if (own.Length == 0)
            {
                outside.Error.WriteLine($"{path}: the key is not open, or does not tell the control; open it with 'reveal' first");
                code = ExitCode.No;
            }
            else
            {
                outside.Output.WriteLine($"{opened.Logbook.Study.Plan!.StudyName}: {own.Count(one => one.Hit)} of {own.Length} right");
            }

            scored.AddRange(own);
        }

        foreach (string line in PredictionScores.Of(scored) is { } scores ? ScoreWords.Of(scores) : [])
        {
            outside.Output.WriteLine(line);
        }

        return code;
    }
}
