using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.State;
using FieldSession.Store.MeterLogs;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The command 'log': compares a meter's own log with the typed readings. Nothing is changed by it: what is in doubt is said, and the crew
/// decides.
/// </summary>
internal static class LogCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Argument<string> file = new("FILE.csv") { Description = "the meter's log" };
        Option<string?> time = new("--time") { Description = "header of the column with the time", HelpName = "COL" };
        Option<string?> date = new("--date") { Description = "header of the column with the date", HelpName = "COL" };
        Option<string?> level = new("--level") { Description = "header of the column with the level", HelpName = "COL" };
        Option<string?> dates = new("--dates") { Description = "order of slashed dates: dmy or mdy", HelpName = "ORDER" };
        Option<string?> zone = new("--zone") { Description = "zone of the meter's clock, such as +01:00", HelpName = "ZONE" };
        Option<string?> start = new("--start")
        {
            Description = "date and time of the first line, where the log counts from its start",
            HelpName = "TIME",
        };
        Option<string?> offset = new("--offset")
        {
            Description = "by how much the meter's clock was ahead of the laptop's",
            HelpName = "S",
        };
        Command command = new("log", "compares a meter's own log with the typed readings; more: 'fieldsession help recordings'")
        {
            study,
            file,
            time,
            date,
            level,
            dates,
            zone,
            start,
            offset,
        };
        command.SetAction(typed =>
            Run(
                typed.GetRequiredValue(study),
                typed.GetRequiredValue(file),
                new TypedLogTerms(
                    typed.GetValue(time),
                    typed.GetValue(date),
                    typed.GetValue(level),
                    typed.GetValue(dates),
                    typed.GetValue(zone),
                    typed.GetValue(start),
                    typed.GetValue(offset)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Reads the log, writes what it says, and tells it.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string study, string path, TypedLogTerms typed, Surroundings outside)
    {
        List<string> objections = [];
        MeterLogTerms terms = typed.Read(outside.Clock.LocalTimeZone, objections, out double? offset);
        MeterLog? log = objections.Count == 0 ? Read(path, terms, objections) : null;
        if (log is null)
        {
            objections.ForEach(outside.Error.WriteLine);
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.At(study, outside);
        if (ListeningGate.ObjectionIn(opened.Logbook.Study) is { } closed)
        {
            outside.Error.WriteLine(closed);
            return ExitCode.No;
        }

        (LogComparison? compared, Objection? objection) = Beside(path, log).Of(opened.Logbook.Study, offset);
        if (compared is null)
        {
            outside.Error.WriteLine($"{path}: {objection}");
            return ExitCode.Wrong;
        }

        Outcome outcome = opened.Logbook.Write(new LogCompared(compared));
        if (outcome.IsWritten)
        {
            LogWords.Of(log, compared, opened.Logbook.Study).ToList().ForEach(outside.Output.WriteLine);
        }
        else
        {
            outside.Error.WriteLine(ShellWords.NotWritten(outcome));
        }

        return ExitCode.Of(outcome);
    }

    private static MeterLog? Read(string path, MeterLogTerms terms, List<string> objections)
    {
        try
        {
            FileRead<MeterLog> read = MeterLogCsv.Read(path, terms);
            objections.AddRange(read.ProblemLines());
            if (read.Content is { BegunAt: null })
            {
                objections.Add($"{path}: {LogWords.NoStart}");
            }

            return objections.Count == 0 ? read.Content : null;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
        {
            objections.Add($"{path}: {ListenWords.CantBeRead}");
            return null;
        }
    }

    private static LogBesideTyped Beside(string path, MeterLog log)
    {
        double begun = RecordingClock.SecondsOf(log.BegunAt!.Value);
        ImmutableArray<LoggedLevel> levels =
        [
            .. log.Lines.Where(line => line.LevelDb is not null).Select(line => new LoggedLevel(begun + line.AtS, line.LevelDb!.Value)),
        ];
        return new(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path))), levels, log.StepS);
    }
}

/// <summary>What was typed behind 'log' about the file; null: not given.</summary>
/// <param name="Time">Header of the column with the time.</param>
/// <param name="Date">Header of the column with the date.</param>
/// <param name="Level">Header of the column with the level.</param>
/// <param name="Dates">Order of slashed dates.</param>
/// <param name="Zone">Zone of the meter's clock.</param>
/// <param name="Start">Date and time of the first line.</param>
/// <param name="Offset">By how much the meter's clock was ahead.</param>
internal sealed record TypedLogTerms(string? Time, string? Date, string? Level, string? Dates, string? Zone, string? Start, string? Offset)
{
    private const double LargestOffsetS = 1e6;

    /// <summary>The terms; where something is wrong the objections say what.</summary>
    /// <param name="zone">The laptop's zone.</param>
    /// <param name="objections">What is wrong.</param>
    /// <param name="offsetS">The meter's clock minus the laptop's, s; null: not given.</param>
    public MeterLogTerms Read(TimeZoneInfo zone, List<string> objections, out double? offsetS)
    {
        offsetS = Offset is { } text ? Typed.Number(text) : null;
        if (Offset is not null && !(Math.Abs(offsetS ?? double.NaN) <= LargestOffsetS))
        {
            objections.Add(ListenWords.NumberIs("--offset", Offset, -LargestOffsetS, LargestOffsetS));
        }

        if (Dates is not (null or "dmy" or "mdy"))
        {
            objections.Add(LogWords.DatesAre(Dates));
        }

        return new(
            Time,
            Date,
            Level,
            Dates switch
            {
                "dmy" => true,
                "mdy" => false,
                _ => null,
            },
            TypedTimes.Zone(Zone, objections),
            TypedTimes.Local("--start", Start, zone, objections)
        );
    }
}

/// <summary>What the command 'log' says: by run and segment, never by code.</summary>
internal static class LogWords
{
    public const string NoStart = "the log counts from its start; give --start with date and time of the first line";

    public static string DatesAre(string text) => $"--dates {Store.Readings.FileProblem.Shown(text)}: give dmy or mdy";

    /// <summary>The answer.</summary>
    public static IEnumerable<string> Of(MeterLog log, LogComparison compared, Study study)
    {
        yield return $"{log.Lines.Length} lines, columns {log.Columns}, one each "
            + $"{log.StepS.ToString("0.###", CultureInfo.InvariantCulture)} s";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"meter's clock {compared.OffsetS:+0.0;-0.0;0.0} s from the laptop's, by {HealthWords.Source(compared.ClockBy)} "
                + $"within {compared.HalfRangeS:0.0} s"
        );
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{compared.Readings.Count(one => one.Fit != EntryFit.NotHeard)} of {compared.Readings.Count} readings compared, "
                + $"typed {compared.MedianDb:+0.0;-0.0;0.0} dB from the log at the median"
        );
        foreach ((Run run, Reading reading, LoggedReading found) in compared.DoubtsIn(study))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"! {Place(run, reading, study)}: {Fit(found.Fit)}, {found.ResidualDb:+0.0;-0.0} dB; 'correct "
                    + $"{run.PlaceOf(reading)} LOW-HIGH' where it is wrong"
            );
        }

        foreach ((Run run, Reading reading, LoggedReading _) in compared.TrafficIn(study))
        {
            yield return $"traffic proposed: {Place(run, reading, study)}; 'flag {run.PlaceOf(reading)} t' flags it late, where "
                + "you saw some";
        }

        if (compared.IsLikeSlow == true)
        {
            yield return "! meter on slow? typed ranges are as narrow as those of time weighting S";
        }

        foreach (string remark in log.Remarks)
        {
            yield return $"! {remark}";
        }
    }

    private static string Place(Run run, Reading reading, Study study) =>
        $"run {run.Number}, {reading.Segment} {study.Plan!.Route[reading.Segment - 1].Name}";

    private static string Fit(EntryFit fit) =>
        fit switch
        {
            EntryFit.TenOff => "ten off",
            EntryFit.DigitsSwapped => "digits swapped",
            _ => "does not fit",
        };
}
