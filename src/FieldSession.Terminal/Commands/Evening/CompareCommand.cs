using System.CommandLine;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.Store.Disks;
using FieldSession.Store.Exports;
using FieldSession.Store.Journaling;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'compare'; null: not given.</summary>
/// <param name="Source">A study file or a readings CSV.</param>
/// <param name="Reference">The code to compare with.</param>
/// <param name="Margin">Margin on steady and all segments, dB.</param>
/// <param name="ImpactMargin">Margin on impacts, dB.</param>
/// <param name="Archive">A CSV of earlier days.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record CompareWords(
    string Source,
    string? Reference = null,
    string? Margin = null,
    string? ImpactMargin = null,
    string? Archive = null,
    bool Json = false
);

/// <summary>The command 'compare': the blind comparison of a study or of a readings CSV, as text or JSON.</summary>
/// <param name="openStudy">Opens a study file and takes its readings.</param>
internal sealed class CompareCommand(Func<string, DayOfStudy> openStudy)
{
    private const string NotAsked =
        "Look out: the plan did not ask for this archive before run 1. What it lends here is only for a look: the "
        + "study's verdict and report go without it.";

    private const string OtherThanPlanned =
        "Look out: reference or margin were given here, not by the plan. This is only for a look, not the study's verdict.";

    // beyond this no two specs differ, and a margin there is a slip of the point
    private const double LargestMarginDb = 20;

    /// <summary>The command as the command line takes it.</summary>
    /// <param name="openStudy">Opens a study file and takes its readings.</param>
    public static Command Make(Func<string, DayOfStudy> openStudy)
    {
        Argument<string> source = new("STUDY") { Description = "a study file, or a readings CSV" };
        Option<string?> reference = new("--reference")
        {
            Description = "the code to compare with; default: the plan's, or the first driven",
            HelpName = "CODE",
        };
        Option<string?> margin = new("--margin")
        {
            Description = "differences within this are equivalent, on steady segments",
            HelpName = "DB",
        };
        Option<string?> impactMargin = new("--impact-margin") { Description = "the same on impacts", HelpName = "DB" };
        Option<string?> archive = new("--archive") { Description = "CSV with the repeatability of earlier days", HelpName = "FILE" };
        Option<bool> json = new("--json") { Description = "JSON instead of text" };
        Command command = new("compare", "the blind comparison of a study or of a readings CSV")
        {
            source,
            reference,
            margin,
            impactMargin,
            archive,
            json,
        };
        command.SetAction(typed =>
            new CompareCommand(openStudy).Run(
                typed.InvocationConfiguration.Output,
                typed.InvocationConfiguration.Error,
                new CompareWords(
                    typed.GetRequiredValue(source),
                    typed.GetValue(reference),
                    typed.GetValue(margin),
                    typed.GetValue(impactMargin),
                    typed.GetValue(archive),
                    typed.GetValue(json)
                )
            )
        );
        return command;
    }

    /// <summary>Compares; the text goes to <paramref name="output"/>, what is wrong to <paramref name="error"/>.</summary>
    /// <returns>An exit code.</returns>
    public int Run(TextWriter output, TextWriter error, CompareWords words)
    {
        if (Asked(words, error) is not { } asked)
        {
            return ExitCode.Wrong;
        }

        (int code, DayOfStudy? source) = Opened(words.Source, error, () => Read(words.Source, error));
        if (source is null)
        {
            return code;
        }

        (code, IReadOnlyList<ArchiveRow>? archive) = words.Archive is { } path
            ? Opened(path, error, () => Content(ArchiveCsv.Read(path), error))
            : (ExitCode.Done, []);
        return archive is null
            ? code
            : Compare(
                output,
                error,
                words,
                asked,
                source,
                StudyTerms.LinesOf(archive.Select(row => row.Scatter).Where(scatter => ArchiveRow.IsOther(scatter, source.Identity)))
            );
    }

    /// <summary>What a file holds, or the exit code that says why it gives nothing.</summary>
    private static (int Code, T? Content) Opened<T>(string path, TextWriter error, Func<T?> open)
        where T : class
    {
        if (Directory.Exists(path))
        {
            error.WriteLine($"{path}: this is a folder; give a file");
            return (ExitCode.Wrong, null);
        }

        try
        {
            T? content = open();
            return (content is null ? ExitCode.Wrong : ExitCode.Done, content);
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            error.WriteLine($"{path}: there is no such file; give one that exists");
            return (ExitCode.Wrong, null);
        }
        catch (Exception unreadable)
            when (unreadable is (IOException and not (StudyFileException or NotAFileException)) or UnauthorizedAccessException)
        {
            error.WriteLine($"{path}: can't be read: {unreadable.Message}; nothing was changed");
            return (ExitCode.Damaged, null);
        }
    }

    private static int Compare(
        TextWriter output,
        TextWriter error,
        CompareWords words,
        (double? MarginDb, double? ImpactMarginDb) asked,
        DayOfStudy source,
        IReadOnlyList<ArchiveLine> archive
    )
    {
        ComparisonTerms terms = source.Terms with
        {
            Reference = words.Reference ?? source.Terms.Reference,
            MarginDb = asked.MarginDb ?? source.Terms.MarginDb,
            ImpactMarginDb = asked.ImpactMarginDb ?? source.Terms.ImpactMarginDb,
            Archive = archive.Count > 0 ? archive : source.Terms.Archive,
        };
        if (!IsDriven(words.Reference, source, error))
        {
            return ExitCode.Wrong;
        }

        Print(output, BlindComparison.InFull(source.Day, terms), source, words);
        return ExitCode.Done;
    }

    private static void Print(TextWriter output, Comparison comparison, DayOfStudy source, CompareWords words)
    {
        EnergyComparison? energy = source.Energy?.Invoke(words.Reference);
        if (words.Json)
        {
            output.WriteLine(Json(comparison, energy, source, words));
            return;
        }

        string[] unasked = words.Archive is not null && source.Energy is not null && source.Terms.Archive is null ? [NotAsked] : [];
        foreach (
            string line in source
                .Remarks.Concat(OtherTerms(source, words))
                .Concat(unasked)
                .Concat(Text(comparison, energy, source))
                .Concat(source.RingInWords)
        )
        {
            output.WriteLine(line);
        }
    }

    // other terms than the plan's are to look at: no line of the study's verdict comes from them
    private static string Json(Comparison comparison, EnergyComparison? energy, DayOfStudy source, CompareWords words)
    {
        string[] other = [.. OtherTerms(source, words)];
        return other.Length > 0
            ? ComparisonJson.Of(comparison with { Remarks = [.. other, .. comparison.Remarks] }, energy, [])
            : ComparisonJson.Of(comparison, energy, (source.Verdicts ?? StudyVerdicts.OfReadings)(comparison), source.Ring);
    }

    // where only energy legs are driven there is nothing to say of levels
    private static IEnumerable<string> Text(Comparison comparison, EnergyComparison? energy, DayOfStudy source) =>
        energy is null ? [.. ComparisonWords.Of(comparison, source.Day), .. source.ChosenAfter]
        : source.Day.Levels.Count == 0 ? EnergyWords.Of(energy, source.Units)
        : [.. ComparisonWords.Of(comparison, source.Day), .. source.ChosenAfter, "", .. EnergyWords.Of(energy, source.Units)];

    private static IEnumerable<string> OtherTerms(DayOfStudy source, CompareWords words) =>
        source.Verdicts is not null && (words.Margin ?? words.ImpactMargin ?? words.Reference) is not null ? [OtherThanPlanned] : [];

    private DayOfStudy? Read(string path, TextWriter error)
    {
        if (!ReadingsSource.IsCsv(path))
        {
            return openStudy(path);
        }

        return Content(ReadingsCsv.Read(path), error) is { } day
            ? new DayOfStudy(day, new ComparisonTerms { Looks = day.OrderRuns is { } runs ? new Looks(runs) : null }, [])
            : null;
    }

    private static T? Content<T>(FileRead<T> read, TextWriter error)
        where T : class
    {
        foreach (string problem in read.ProblemLines())
        {
            error.WriteLine(problem);
        }

        return read.Content;
    }

    private static (double? MarginDb, double? ImpactMarginDb)? Asked(CompareWords words, TextWriter error)
    {
        bool good =
            TryMargin("--margin", words.Margin, error, out double? margin)
            & TryMargin("--impact-margin", words.ImpactMargin, error, out double? impactMargin);
        return good ? (margin, impactMargin) : null;
    }

    private static bool TryMargin(string option, string? text, TextWriter error, out double? marginDb)
    {
        marginDb = text is null ? null : Typed.Number(text);
        if (text is null || marginDb is > 0 and <= LargestMarginDb)
        {
            return true;
        }

        error.WriteLine($"{option} {FileProblem.Shown(text)}: not a margin; give dB above 0 and up to {LargestMarginDb}, such as 1.0");
        return false;
    }

    private static bool IsDriven(string? reference, DayOfStudy source, TextWriter error)
    {
        if (reference is null || source.Day.Levels.Any(level => level.Code == reference))
        {
            return true;
        }

        // a code of the energy days alone is a reference for them
        string[] ofLegs = [.. source.Energy?.Invoke(null)?.Codes.Select(code => code.Code) ?? []];
        if (ofLegs.Contains(reference))
        {
            return true;
        }

        string[] codes = [.. source.Day.Levels.OrderBy(level => level.Run).Select(level => level.Code).Concat(ofLegs).Distinct()];
        error.WriteLine(
            $"--reference {FileProblem.Shown(reference)}: "
                + $"{(codes.Length == 0 ? CommandWords.NothingIsDrivenYet : CommandWords.NoRunOnThisCode(codes))}"
        );
        return false;
    }
}
