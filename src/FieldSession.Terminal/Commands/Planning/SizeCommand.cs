using System.CommandLine;
using System.Globalization;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.Store.Exports;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'size'; null: not given.</summary>
/// <param name="Difference">The difference to be shown, dB.</param>
/// <param name="RunSd">Run-to-run standard deviation, dB.</param>
/// <param name="ReadingSd">Standard deviation of a reading, dB.</param>
/// <param name="Segments">Segments compared.</param>
/// <param name="Power">The chance wanted, 0.5 to 0.99.</param>
/// <param name="Margin">Margin of equivalence, dB.</param>
/// <param name="Runs">Runs per code to judge.</param>
/// <param name="Choices">Forced choices to judge, instead of runs.</param>
/// <param name="Archive">A CSV of earlier days, whose scatter on steady segments is taken.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record AskedSize(
    string? Difference = null,
    string? RunSd = null,
    string? ReadingSd = null,
    string? Segments = null,
    string? Power = null,
    string? Margin = null,
    string? Runs = null,
    string? Choices = null,
    string? Archive = null,
    bool Json = false
);

/// <summary>The command 'size': how many runs a wanted difference needs, and what a number of runs can show.</summary>
internal static class SizeCommand
{
    // own simulations of a usual day; said to be assumed wherever they are used
    private const double AssumedRunSdDb = 0.35;
    private const double AssumedReadingSdDb = 0.75;
    private const int AssumedSegments = 10;
    private const double DefaultDb = 1;
    private const double DefaultPower = 0.8;
    private const double LargestDb = 20;

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make()
    {
        Option<string?> difference = new("--difference") { Description = "the difference to be shown; default 1", HelpName = "DB" };
        Option<string?> runSd = new("--run-sd") { Description = "how runs scatter; default 0.35, assumed", HelpName = "DB" };
        Option<string?> readingSd = new("--reading-sd")
        {
            Description = "how readings scatter within a run; default 0.75, assumed",
            HelpName = "DB",
        };
        Option<string?> segments = new("--segments") { Description = "segments compared; default 10, assumed", HelpName = "N" };
        Option<string?> power = new("--power") { Description = "the chance wanted; default 0.8", HelpName = "P" };
        Option<string?> margin = new("--margin") { Description = "the margin of equivalence; default 1", HelpName = "DB" };
        Option<string?> runs = new("--runs") { Description = "runs per code: what they can show", HelpName = "N" };
        Option<string?> choices = new("--choices")
        {
            Description = "forced choices: what so many can show, instead of runs",
            HelpName = "N",
        };
        Option<string?> archive = new("--archive")
        {
            Description = "CSV of earlier days ('archive FOLDER --csv'): how runs and readings scattered on steady segments",
            HelpName = "FILE",
        };
        Option<bool> json = new("--json") { Description = "JSON instead of text" };
        Command command = new("size", "how many runs a wanted difference needs")
        {
            difference,
            runSd,
            readingSd,
            segments,
            power,
            margin,
            runs,
            choices,
            archive,
            json,
        };
        command.SetAction(typed =>
            Run(
                typed.InvocationConfiguration.Output,
                typed.InvocationConfiguration.Error,
                new AskedSize(
                    typed.GetValue(difference),
                    typed.GetValue(runSd),
                    typed.GetValue(readingSd),
                    typed.GetValue(segments),
                    typed.GetValue(power),
                    typed.GetValue(margin),
                    typed.GetValue(runs),
                    typed.GetValue(choices),
                    typed.GetValue(archive),
                    typed.GetValue(json)
                )
            )
        );
        return command;
    }

    /// <summary>Answers; the text goes to <paramref name="output"/>, what is wrong to <paramref name="error"/>.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(TextWriter output, TextWriter error, AskedSize asked)
    {
        if (asked.Archive is { } archive)
        {
            return FromArchive(archive, error) is { } found
                ? Run(
                    output,
                    error,
                    asked with
                    {
                        Archive = null,
                        RunSd = asked.RunSd ?? found.RunSd,
                        ReadingSd = asked.ReadingSd ?? found.ReadingSd,
                    }
                )
                : ExitCode.Wrong;
        }

        Numbers numbers = new(error);
        SizeTerms terms = new(
            numbers.Between("--run-sd", asked.RunSd, AssumedRunSdDb, 0, LargestDb),
            numbers.Between("--reading-sd", asked.ReadingSd, AssumedReadingSdDb, 0, LargestDb),
            (int)numbers.Whole("--segments", asked.Segments, AssumedSegments, 1, 10_000),
            numbers.Between("--difference", asked.Difference, DefaultDb, 0.01, LargestDb),
            numbers.Between("--margin", asked.Margin, DefaultDb, 0.01, LargestDb),
            numbers.Between("--power", asked.Power, DefaultPower, 0.5, 0.99)
        );
        int runs = (int)numbers.Whole("--runs", asked.Runs, 0, 2, 200);
        int choices = (int)numbers.Whole("--choices", asked.Choices, 0, 1, 200);
        if (terms.RunMeanSdDb <= 0)
        {
            numbers.Refuse("--run-sd and --reading-sd are both 0: no day repeats perfectly; give what earlier days showed");
        }

        if (!numbers.AreGood)
        {
            return ExitCode.Wrong;
        }

        if (asked.Choices is not null)
        {
            Write(output, ChoiceSizeWords.Of(choices));
            return ExitCode.Done;
        }

        Print(output, DaySize.Of(terms), asked.Runs is null ? null : DaySize.Row(terms, runs), Assumed(asked), asked.Json);
        return ExitCode.Done;
    }

    private static (string RunSd, string ReadingSd)? FromArchive(string path, TextWriter error)
    {
        if (!File.Exists(path))
        {
            error.WriteLine($"{path}: there is no such file; give one that 'archive FOLDER --csv' wrote");
            return null;
        }

        FileRead<IReadOnlyList<ArchiveRow>> read = ArchiveCsv.Read(path);
        foreach (string problem in read.ProblemLines())
        {
            error.WriteLine(problem);
        }

        if (read.Content is not { } rows)
        {
            return null;
        }

        if (ArchiveSpread.Of(StudyTerms.LinesOf(rows.Select(row => row.Scatter)), MeasureClass.Steady) is not { } spread)
        {
            error.WriteLine($"{path}: no steady line with degrees of freedom; leave --archive out, or give --run-sd and --reading-sd");
            return null;
        }

        return (spread.RunSdDb.ToString("R", CultureInfo.InvariantCulture), spread.ReadingSdDb.ToString("R", CultureInfo.InvariantCulture));
    }

    private static string[] Assumed(AskedSize asked) =>
        [
            .. asked.RunSd is null ? ["run_sd"] : Array.Empty<string>(),
            .. asked.ReadingSd is null ? ["reading_sd"] : Array.Empty<string>(),
            .. asked.Segments is null ? ["segments"] : Array.Empty<string>(),
        ];

    private static void Print(TextWriter output, DaySize size, SizeRow? row, string[] assumed, bool json)
    {
        if (json)
        {
            output.WriteLine(SizeJson.Of(size, row, assumed));
            return;
        }

        Write(output, SizeWords.Of(size, row, assumed));
    }

    private static void Write(TextWriter output, IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }
    }

    /// <summary>Reads the numbers and tells every one that is wrong.</summary>
    /// <param name="error">Where it is told.</param>
    private sealed class Numbers(TextWriter error)
    {
        public bool AreGood { get; private set; } = true;

        public double Between(string option, string? text, double otherwise, double least, double most) =>
            Read(option, text, otherwise, least, most, isWhole: false);

        public double Whole(string option, string? text, double otherwise, double least, double most) =>
            Read(option, text, otherwise, least, most, isWhole: true);

        public void Refuse(string why)
        {
            error.WriteLine(why);
            AreGood = false;
        }

        private double Read(string option, string? text, double otherwise, double least, double most, bool isWhole)
        {
            if (text is null)
            {
                return otherwise;
            }

            double? number = Typed.Number(text);
            if (number >= least && number <= most && (!isWhole || double.IsInteger(number.Value)))
            {
                return number.Value;
            }

            Refuse($"{option} {FileProblem.Shown(text)}: give {(isWhole ? "a whole number" : "a number")} from {least} to {most}");
            return otherwise;
        }
    }
}
