using System.Collections.Immutable;
using System.CommandLine;
using System.Security.Cryptography;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.State;
using FieldSession.Store.MeterLogs;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'log': compares a meter's own log with the typed readings. Nothing is changed by it: what is in doubt is said, and the crew decides.</summary>
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
        Option<string?> start = new("--start") { Description = "date and time of the first line, where the log counts from its start", HelpName = "TIME" };
        Option<string?> offset = new("--offset") { Description = "by how much the meter's clock was ahead of the laptop's", HelpName = "S" };
        Command command = new("log", "compares a meter's own log with the typed readings; more: 'fieldsession help recordings'")
        {
            study, file, time, date, level, dates, zone, start, offset,
        };
        command.SetAction(typed => Run(
            typed.GetRequiredValue(study),
            typed.GetRequiredValue(file),
            new TypedLogTerms(
                typed.GetValue(time), typed.GetValue(date), typed.GetValue(level), typed.GetValue(dates), typed.GetValue(zone), typed.GetValue(start), typed.GetValue(offset)),
            outside));
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
        ImmutableArray<LoggedLevel> levels = [.. log.Lines.Where(line => line.LevelDb is not null).Select(line => new LoggedLevel(begun + line.AtS, line.LevelDb!.Value))];
        return new(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path))), levels, log.StepS);
    }
}
