using System.CommandLine;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'review': the blind summary, by code only.</summary>
internal static class ReviewCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Command command = new("review", "the blind summary, by code only; read it when parked") { study };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.ToRead(typed.GetRequiredValue(study), outside);
            Print(opened.Logbook, outside);
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>Prints the blind summary and the head hash that pins it.</summary>
    public static void Print(Logbook logbook, Surroundings outside)
    {
        MeasuredDay day = StudyReadings.Of(logbook.Study);
        ComparisonTerms terms = StudyTerms.Of(logbook.Study);
        Comparison comparison = BlindComparison.InFull(day, terms);
        EarFindings ear = EarFindings.Of(logbook.Study, terms);
        RingFinding? ring = RingFinding.Of(logbook.Study);
        IEnumerable<string> card = logbook.Study.Asked is null ? [] : [.. BlindCard.Lines(logbook.Study, day, comparison, ear, ring), ""];
        foreach (
            string line in BlindWords
                .Remarks(logbook.Study)
                .SelectMany(remark => PlainLines.Wrapped("", remark))
                .Concat(card)
                .Concat(ComparisonWords.Of(comparison, day))
                .Concat(ChosenAfterWords.Of(logbook.Study, day))
                .Concat(EarWords.Of(ear))
                .Concat(RingWords.Of(logbook.Study, ring))
        )
        {
            outside.Output.WriteLine(line);
        }

        IEnumerable<string> energy = StudyLegs.ComparisonOf(logbook.Study) is { } days
            ? EnergyWords.Of(days, logbook.Study.Plan!.Units).Prepend("")
            : [];
        foreach (string line in energy)
        {
            outside.Output.WriteLine(line);
        }

        foreach (
            string line in StillMissing
                .In(logbook.Study)
                .Append(NextDay.Line(logbook.Study))
                .OfType<string>()
                .SelectMany(words => PlainLines.Wrapped("- ", words))
        )
        {
            outside.Output.WriteLine(line);
        }

        outside.Output.WriteLine();
        outside.Output.WriteLine($"journal: {logbook.Lines.Count} lines, head {logbook.HeadHash}");
        outside.Output.WriteLine("noted on paper, the head hash pins every line before it: 'verify STUDY --head HASH'");
    }
}
