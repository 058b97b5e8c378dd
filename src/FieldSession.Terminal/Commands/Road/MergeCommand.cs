using System.CommandLine;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'merge': takes the other laptops' strands into a study. Doing it again changes nothing.</summary>
internal static class MergeCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file that takes the others in" };
        Argument<string[]> others = new("OTHER")
        {
            Description = "the other laptops' copies of the study; they are only read",
            Arity = ArgumentArity.OneOrMore,
        };
        Command command = new("merge", "takes the other laptops' strands of the study in; doing it again changes nothing")
        {
            study,
            others,
        };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(others), outside));
        return command;
    }

    /// <summary>Merges, and says what was new and which conflicts there are.</summary>
    /// <returns>0 where all is taken in, conflicts or not; 2 where a file is none of this study.</returns>
    public static int Run(string path, IReadOnlyList<string> others, Surroundings outside)
    {
        MergedStudy merged;
        using (StudyFile file = StudyFile.Open(path, outside.Clock, OpenedStudy.TermsIn(outside)))
        {
            foreach (string repaired in file.Repaired)
            {
                outside.Error.WriteLine(repaired);
            }

            try
            {
                merged = StudyMerge.Into(file, others);
            }
            catch (OtherStudyException foreign)
            {
                outside.Error.WriteLine(foreign.Message);
                return ExitCode.Wrong;
            }
        }

        foreach (string line in merged.Files.SelectMany(InWords).Concat(Summary(merged)))
        {
            outside.Output.WriteLine(line);
        }

        return ExitCode.Done;
    }

    private static IEnumerable<string> InWords(MergedFile file) =>
        file.Strands.Count == 0
            ? [$"{file.File}: nothing new"]
            : file.Strands.Select(strand => $"{file.File}: {strand.Lines} new lines of strand {strand.Strand}");

    private static IEnumerable<string> Summary(MergedStudy merged)
    {
        Study study = Logbook.Fold(merged.Lines);
        int strands = merged.Lines.Select(line => line.Strand).Distinct().Count();
        yield return $"{study.Plan?.StudyName}: {merged.Lines.Count} lines of {strands} strand{(strands == 1 ? "" : "s")}, "
            + $"{study.Runs.Count} runs";
        foreach (string conflict in ConflictWords.Of(study))
        {
            yield return conflict;
        }
    }
}
