using System.CommandLine;
using System.Globalization;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Archiving;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'archive'; null: not given.</summary>
/// <param name="Folder">The folder of studies.</param>
/// <param name="Person">Someone of the crew.</param>
/// <param name="Route">Part of a segment's name, or a kind.</param>
/// <param name="Since">From this day on.</param>
/// <param name="Until">To this day.</param>
/// <param name="Csv">Archive CSV instead of words.</param>
/// <param name="Json">JSON instead of words.</param>
/// <param name="Study">A study that takes the repeatability.</param>
internal sealed record ArchiveAsked(
    string Folder,
    string? Person = null,
    string? Route = null,
    string? Since = null,
    string? Until = null,
    bool Csv = false,
    bool Json = false,
    string? Study = null
);

/// <summary>
/// The command 'archive': lists a folder of studies, filters it and sums it up, and lends its repeatability to a study before run 1.
/// </summary>
internal static class ArchiveCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> folder = new("FOLDER") { Description = "the folder of studies, with all folders below it" };
        Option<string?> crew = new("--crew") { Description = "studies with this person in the crew", HelpName = "NAME" };
        Option<string?> route = new("--route") { Description = "studies with this in a segment's name or kind", HelpName = "WORDS" };
        Option<string?> since = new("--since") { Description = "begun on this day or later", HelpName = "YYYY-MM-DD" };
        Option<string?> until = new("--until") { Description = "begun on this day or earlier", HelpName = "YYYY-MM-DD" };
        Option<bool> csv = new("--csv") { Description = "the CSV that 'compare --archive' reads" };
        Option<bool> json = new("--json") { Description = "the same as JSON" };
        Option<string?> study = new("--for")
        {
            Description = "writes the repeatability of this study's own crew and loop into it, before its run 1",
            HelpName = "STUDY",
        };
        Command command = new("archive", "lists, filters and sums up a folder of studies")
        {
            folder,
            crew,
            route,
            since,
            until,
            csv,
            json,
            study,
        };
        command.SetAction(typed =>
            Run(
                new ArchiveAsked(
                    typed.GetRequiredValue(folder),
                    typed.GetValue(crew),
                    typed.GetValue(route),
                    typed.GetValue(since),
                    typed.GetValue(until),
                    typed.GetValue(csv),
                    typed.GetValue(json),
                    typed.GetValue(study)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Reads the folder and says what it holds.</summary>
    /// <returns>0; 1 where a study could not be read or the archive lends nothing; 2 where the words are wrong.</returns>
    public static int Run(ArchiveAsked asked, Surroundings outside)
    {
        if (
            !TryDay("--since", asked.Since, outside, out DateOnly? since) | !TryDay("--until", asked.Until, outside, out DateOnly? until)
            || ReadFolder(asked.Folder, outside) is not { } reading
        )
        {
            return ExitCode.Wrong;
        }

        ArchiveFilter filter = new(Person: asked.Person, Segment: asked.Route, Since: since, Until: until);
        ArchivedStudy[] studies = [.. reading.Studies.Where(filter.Takes)];
        if (asked.Study is { } study)
        {
            using OpenedStudy opened = OpenedStudy.At(study, outside);
            return Answer.To(opened.Logbook.Write(Taken(asked.Folder, opened.Logbook, [.. ArchiveRow.Of(studies)])), outside);
        }

        foreach (string line in Told(asked, studies))
        {
            outside.Output.WriteLine(line);
        }

        return reading.Problems.Count == 0 ? ExitCode.Done : ExitCode.No;
    }

    private static IEnumerable<string> Told(ArchiveAsked asked, ArchivedStudy[] studies) =>
        asked switch
        {
            { Json: true } => [ArchiveJson.Of(studies)],
            { Csv: true } => ArchiveLinesCsv.Of(studies.Where(one => one.IsFinished)),
            _ => InWords(studies),
        };

    /// <summary>Reads an archive's folder and says what is wrong with it; null: there is no such folder.</summary>
    public static ArchiveReading? ReadFolder(string folder, Surroundings outside)
    {
        try
        {
            ArchiveReading reading = ArchiveFolder.Read(folder);
            foreach (
                string problem in reading
                    .Problems.Concat(reading.Copies)
                    .Concat(
                        reading.IndexFault is { } fault
                            ? [$"{folder}: the index could not be written ({fault}); nothing is lost, the next reading takes longer"]
                            : []
                    )
            )
            {
                outside.Error.WriteLine(problem);
            }

            return reading;
        }
        catch (DirectoryNotFoundException missing)
        {
            outside.Error.WriteLine(missing.Message);
            return null;
        }
    }

    /// <summary>
    /// What the archive that a plan names can lend: of a folder of studies, or of a CSV that 'archive --csv' wrote; null: neither is there,
    /// and it was said.
    /// </summary>
    public static IReadOnlyList<ArchiveRow>? Rows(string path, Surroundings outside)
    {
        if (!File.Exists(path))
        {
            return ReadFolder(path, outside) is { } reading ? [.. ArchiveRow.Of(reading.Studies)] : null;
        }

        FileRead<IReadOnlyList<ArchiveRow>> read = ArchiveCsv.Read(path);
        foreach (string problem in read.ProblemLines())
        {
            outside.Error.WriteLine(problem);
        }

        return read.Content;
    }

    /// <summary>What a study takes from an archive: the days of its own crew on its own loop.</summary>
    public static Entry Taken(string archive, Logbook logbook, IEnumerable<ArchiveRow> rows) =>
        new ArchiveTaken(
            archive,
            [.. logbook.Study.Plan is { } plan ? ArchiveRow.LentTo(plan, StudyState.IdentityOf(logbook.Lines), rows) : []]
        );

    /// <summary>
    /// What the archive that a plan names would lend to it, as far as it can be read; empty: it names none, or there is nothing of this
    /// crew and loop.
    /// </summary>
    /// <param name="folder">The plan's folder.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="outside">The world outside.</param>
    public static IReadOnlyList<ArchiveLine> LentTo(string folder, Plan plan, Surroundings outside) =>
        plan.Archive is { } named && Rows(Path.Combine(folder, named), outside) is { } rows
            ? StudyTerms.LinesOf(ArchiveRow.LentTo(plan, own: null, rows))
            : [];

    /// <summary>What the archive that a plan names says of its road; null: it names no folder, or nothing is known.</summary>
    public static RoadAdvice? RoadOf(string folder, Plan plan, Surroundings outside) =>
        plan.Archive is { } named
        && Path.Combine(folder, named) is { } path
        && !File.Exists(path)
        && ReadFolder(path, outside) is { } reading
            ? RoadAdvice.Of(plan, reading.Studies)
            : null;

    private static IEnumerable<string> InWords(ArchivedStudy[] studies)
    {
        string[] scores = PredictionScores.Of(studies.SelectMany(study => study.Predictions)) is { } scored
            ? ["predictions", .. ScoreWords.Of(scored)]
            : [];
        return
        [
            .. ArchiveWords.Listed(studies),
            $"{studies.Length} studies, {studies.Count(study => study.IsFinished)} finished",
            .. ArchiveWords.Summed(ArchiveSum.Of(studies)),
            .. ArchiveWords.Answered(ArchiveAnswers.Of(studies)),
            .. scores,
        ];
    }

    private static bool TryDay(string option, string? text, Surroundings outside, out DateOnly? day)
    {
        day = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly read)
            ? read
            : null;
        if (text is null || day is not null)
        {
            return true;
        }

        outside.Error.WriteLine($"{option} {text}: not a day; give it as 2026-02-03");
        return false;
    }
}
