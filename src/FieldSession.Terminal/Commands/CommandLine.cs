using System.CommandLine;
using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store;
using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>The commands, in the order of the job.</summary>
internal static class CommandLine
{
    /// <summary>Runs the command that the words name; what breaks is said here, once.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string[] words, Surroundings outside)
    {
        try
        {
            return Command(words, outside);
        }
        catch (Exception wrong)
            when (wrong is StudyMissingException or StudyNameException or StudyExistsException or TextRefusedException or NotAFileException)
        {
            outside.Error.WriteLine($"fieldsession: {wrong.Message}");
            return ExitCode.Wrong;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine($"fieldsession: {broken.Message}");
            return ExitCode.Damaged;
        }
    }

    private static int Command(string[] words, Surroundings outside)
    {
        if (words.Length == 0)
        {
            return WithoutWords(outside);
        }

        ParseResult typed = Make(outside).Parse(words);
        if (typed.Errors.Count == 0)
        {
            int code = typed.Invoke(
                new InvocationConfiguration
                {
                    EnableDefaultExceptionHandler = false,
                    Output = outside.Output,
                    Error = outside.Error,
                }
            );
            if (code == ExitCode.Done && typed.Action is not GuidedHelp)
            {
                NextLine.Say(typed.CommandResult, outside);
            }

            return code;
        }

        foreach (string wrong in typed.Errors.Select(e => e.Message).Distinct())
        {
            outside.Error.WriteLine($"fieldsession: {wrong}");
        }

        outside.Error.WriteLine(CommandWords.WhereHelpIs);
        return ExitCode.Wrong;
    }

    // Without words a person at a terminal gets the start screen; a script is told what words there are.
    private static int WithoutWords(Surroundings outside)
    {
        if (outside.HasTerminal && TerminalGuard.WhyNot() is null)
        {
            return StartScreen.Run(outside);
        }

        Make(outside).Parse(["--help"]).Invoke(new InvocationConfiguration { Output = outside.Error, Error = outside.Error });
        return ExitCode.Wrong;
    }

    /// <summary>All commands.</summary>
    public static RootCommand Make(Surroundings outside) =>
        GuidedHelp.For(
            new(CommandWords.ProgramInOneSentence)
            {
                PlanCommand.Make(outside),
                OrdersCommand.Make(outside),
                TyreCommand.Make(outside),
                PaperCommand.Make(outside),
                StartCommand.Make(outside),
                SealCommand.Make(outside),
                CodesCommand.Make(outside),
                FittingCommand.Make(outside),
                KeycheckCommand.Make(outside),
                DriveCommand.Make(outside),
                EnterCommand.Make(outside),
                LegsCommand.Make(outside),
                SlipCommand.Make(outside),
                ListenCommand.Make(outside),
                LogCommand.Make(outside),
                PlayCommand.Make(outside),
                CompareCommand.Make(path => DayIn(path, outside)),
                MergeCommand.Make(outside),
                ReviewCommand.Make(outside),
                PredictCommand.Make(outside),
                RevealCommand.Make(outside),
                ReportCommand.Make(outside),
                ExportCommand.Make(outside),
                SchemaCommand.Make(outside),
                ScoreCommand.Make(outside),
                ArchiveCommand.Make(outside),
                VerifyCommand.Make(outside),
                RescueCommand.Make(outside),
                SizeCommand.Make(),
                LevelsCommand.Make(outside),
                DemoCommand.Make(outside),
                HelpCommand.Make(outside),
                CompletionCommand.Make(outside),
                ManCommand.Make(outside, () => Make(outside)),
                LicencesCommand.Make(outside),
            }
        );

    private static DayOfStudy DayIn(string path, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.ToRead(path, outside);
        Study study = opened.Logbook.Study;
        MeasuredDay day = StudyReadings.Of(study);
        OpenedKey? key = OpenedKey.In(opened.Logbook.Entries);
        RingFinding? ring = RingFinding.Of(study);
        return new DayOfStudy(day, StudyTerms.Of(study), [.. BlindWords.Remarks(study)])
        {
            Identity = StudyState.IdentityOf(opened.Logbook.Lines),
            Verdicts = comparison => StudyVerdicts.Of(study, comparison, EarFindings.Of(study, StudyTerms.Of(study)), key, ring),
            Ring = ring,
            RingInWords = [.. RingWords.Of(study, ring)],
            ChosenAfter = [.. ChosenAfterWords.Of(study, day)],
            Energy = reference => StudyLegs.ComparisonOf(study, reference),
            Units = study.Plan?.Units ?? UnitSystem.Metric,
        };
    }
}
