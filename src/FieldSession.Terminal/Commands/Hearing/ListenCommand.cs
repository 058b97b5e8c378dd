using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Listening;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'listen': takes recordings of the runs into a study. The sound stays where it is; only levels are kept.</summary>
internal static class ListenCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Argument<string[]> files = new("FILE")
        {
            Description = "recordings, WAV or FLAC; all of a day at once is best",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string?> chain = new("--chain") { Description = "the chain that recorded them; default 'recorder'", HelpName = "NAME" };
        Option<string?> channel = new("--channel") { Description = "the channel, from 1; default 1", HelpName = "N" };
        Option<string?> tone = new("--tone") { Description = "what the calibrator makes; default: the plan's", HelpName = "DB" };
        Option<string?> gain = new("--gain")
        {
            Description = "level = 10 lg of the mean square + gain, where no tone was recorded",
            HelpName = "DB",
        };
        Option<string?> zone = new("--zone") { Description = "zone of the recorder's own clock, such as +01:00", HelpName = "ZONE" };
        Option<string?> offset = new("--offset")
        {
            Description = "by how much the recorder's clock was ahead of the laptop's",
            HelpName = "S",
        };
        Option<string?> begun = new("--begun")
        {
            Description = "when the recording began, as 2026-02-03 09:12:03 on the laptop's clock",
            HelpName = "TIME",
        };
        Option<string?> clock = new("--clock")
        {
            Description = "which is right where they contradict each other: marks or file",
            HelpName = "WHICH",
        };
        Option<string?> run = new("--run") { Description = "the only run that the recording is of", HelpName = "N" };
        Option<bool> again = new("--again") { Description = "takes the place of another recording of the same run" };
        Option<string?> grid = new("--grid")
        {
            Description = "segment: levels of each window (usual); none: no highest level either",
            HelpName = "WHICH",
        };
        Option<bool> json = new("--json") { Description = "JSON instead of text" };
        Command command = new(
            "listen",
            "takes recordings of the runs into a study; only levels are kept; more: 'fieldsession help recordings'"
        )
        {
            study,
            files,
            chain,
            channel,
            tone,
            gain,
            zone,
            offset,
            begun,
            clock,
            run,
            again,
            grid,
            json,
        };
        command.SetAction(typed =>
            Run(
                new TypedListening(
                    typed.GetRequiredValue(study),
                    typed.GetRequiredValue(files),
                    typed.GetValue(chain),
                    typed.GetValue(channel),
                    typed.GetValue(tone),
                    typed.GetValue(gain),
                    new TypedClock(
                        typed.GetValue(zone),
                        typed.GetValue(offset),
                        typed.GetValue(begun),
                        typed.GetValue(clock),
                        typed.GetValue(run)
                    ),
                    typed.GetValue(again),
                    typed.GetValue(grid),
                    typed.GetValue(json)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Listens to the recordings and says how they are; nothing is written before all of them were read.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(TypedListening typed, Surroundings outside)
    {
        List<string> objections = [];
        AskedListening? asked = AskedListening.Read(typed, outside.Clock.LocalTimeZone, objections);
        if (asked is null)
        {
            objections.ForEach(outside.Error.WriteLine);
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.At(asked.Study, outside);
        return Take(opened.Logbook, asked, outside);
    }

    /// <summary>Takes recordings into a study that is open.</summary>
    /// <returns>An exit code.</returns>
    public static int Take(Logbook logbook, AskedListening asked, Surroundings outside)
    {
        if (ListeningGate.ObjectionIn(logbook.Study) is { } objection)
        {
            outside.Error.WriteLine(objection);
            return ExitCode.No;
        }

        FileListened[] files = FileListened.Of(logbook.Study, asked);
        List<Outcome> outcomes = [.. files.SelectMany(file => file.Facts).Select(logbook.Write)];
        if (asked.Json)
        {
            outside.Output.WriteLine(Store.Recordings.HealthJson.Of(logbook.Study));
        }
        else
        {
            ListenWords.Of(files, logbook.Study).ToList().ForEach(outside.Output.WriteLine);
        }

        files
            .Where(file => file.Refused.Length > 0)
            .SelectMany(file => file.Refused.Select(why => $"{file.Path}: {why}"))
            .ToList()
            .ForEach(outside.Error.WriteLine);
        outcomes.Where(outcome => !outcome.IsWritten).ToList().ForEach(outcome => outside.Error.WriteLine(ShellWords.NotWritten(outcome)));
        return outcomes.Select(ExitCode.Of).Append(files.Any(file => file.Refused.Length > 0) ? ExitCode.Wrong : ExitCode.Done).Max();
    }
}
