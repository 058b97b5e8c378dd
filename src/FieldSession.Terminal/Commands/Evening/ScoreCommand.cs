using System.CommandLine;
using FieldSession.Journal;
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

    /// <summary>Scores the predictions of the studies together; copies of one study count once.</summary>
    /// <returns>0; 1 where a study can't be scored.</returns>
    public static int Run(IReadOnlyList<string> paths, Surroundings outside)
    {
        List<ScoredPrediction> scored = [];
        int code = ExitCode.Done;
        foreach (
            StudyCopies<ScoredStudy> study in EachStudyOnce.Of(
                paths.Distinct(StringComparer.Ordinal).Select(path => Read(path, outside)).ToArray(),
                one => one.State,
                one => one.Lines
            )
        )
        {
            string? trouble =
                study.Newest is not { } newest ? ScoreWords.WentOnDifferently([.. study.Others.Select(copy => copy.Path)])
                : newest.Predictions.Count == 0 ? ScoreWords.KeyIsNotOpen(newest.Path)
                : null;
            if (trouble is not null)
            {
                outside.Error.WriteLine(trouble);
                code = ExitCode.No;
                continue;
            }

            outside.Output.WriteLine(ScoreWords.OfStudy(study.Newest!.Name, study.Study, study.Newest.Predictions, study.Others.Length));
            scored.AddRange(study.Newest.Predictions);
        }

        foreach (string line in PredictionScores.Of(scored) is { } scores ? ScoreWords.Of(scores) : [])
        {
            outside.Output.WriteLine(line);
        }

        return code;
    }

    private static ScoredStudy Read(string path, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.ToRead(path, outside);
        return new ScoredStudy(
            path,
            opened.Logbook.Study.Plan?.StudyName ?? "",
            StudyState.Of(opened.Logbook.Lines)!,
            opened.Logbook.Lines,
            [.. PredictionScores.In(opened.Logbook.Study, OpenedKey.In(opened.Logbook.Entries))]
        );
    }

    private sealed record ScoredStudy(
        string Path,
        string Name,
        StudyState State,
        IReadOnlyList<Line> Lines,
        IReadOnlyList<ScoredPrediction> Predictions
    );
}
