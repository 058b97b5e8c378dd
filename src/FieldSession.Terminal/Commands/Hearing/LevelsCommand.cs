using System.CommandLine;
using FieldSession.Acoustics;
using FieldSession.Store.Readings;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The command 'levels': what a recording holds, outside any study. The recording is only read, and nothing is written anywhere.
/// </summary>
internal static class LevelsCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> file = new("FILE") { Description = "the recording, WAV or FLAC; '-': piped in" };
        Option<string?> gain = new("--gain") { Description = "level = 10 lg of the mean square + gain", HelpName = "DB" };
        Option<string?> tone = new("--tone")
        {
            Description = "gain from the calibrator's tone of 1 kHz in FILE; what the calibrator makes, such as 94",
            HelpName = "DB",
        };
        Option<string?> after = new("--after")
        {
            Description = "the tone once more, in another recording: how far the chain drifted",
            HelpName = "FILE",
        };
        Option<string[]> window = new("--window")
        {
            Description = "a stretch in seconds, as often as wanted; default: the whole recording",
            HelpName = "FROM-TO",
        };
        Option<string?> impacts = new("--impacts")
        {
            Description = "CSV with segment,window_start_s,window_end_s: how long the ring lasts",
            HelpName = "CSV",
        };
        Option<string?> channel = new("--channel") { Description = "the channel, from 1; default 1", HelpName = "N" };
        Option<string?> raw = new("--raw")
        {
            Description = "samples without a header, low byte first: RATE,BITS,CHANNELS; bits 16, 24, 32, f32, f64",
            HelpName = "FORM",
        };
        Option<bool> json = new("--json") { Description = "JSON instead of text" };
        Command command = new("levels", "what a recording holds: levels, bands, ring; more: 'fieldsession help recordings'")
        {
            file,
            gain,
            tone,
            after,
            window,
            impacts,
            channel,
            raw,
            json,
        };
        command.SetAction(typed =>
            Run(
                new TypedLevels(
                    typed.GetRequiredValue(file),
                    typed.GetValue(gain),
                    typed.GetValue(tone),
                    typed.GetValue(after),
                    typed.GetValue(window) ?? [],
                    typed.GetValue(impacts),
                    typed.GetValue(channel),
                    typed.GetValue(raw),
                    typed.GetValue(json)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Reads the recording and says what it holds.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(TypedLevels typed, Surroundings outside)
    {
        List<string> objections = [];
        AskedLevels? asked = AskedLevels.Read(typed, objections);
        IReadOnlyList<ListedImpact> impacts = typed.Impacts is { } list ? Impacts(list, objections) : [];
        if (asked is null || objections.Count > 0)
        {
            objections.ForEach(outside.Error.WriteLine);
            return ExitCode.Wrong;
        }

        string reading = asked.File;
        try
        {
            MeteredPass metered = MeteredPass.Of(asked, impacts, outside.InputBytes);
            CalibratorTone? after = null;
            if (asked.After is { } path)
            {
                reading = path;
                after = MeteredPass.ToneIn(path, asked.Channel);
            }

            MeteredRecording recording = metered.Calibrated(asked, after);
            outside.Output.WriteLine(asked.Json ? LevelsJson.Of(recording) : string.Join('\n', LevelsWords.Of(recording)));
            return ExitCode.Done;
        }
        catch (RecordingRefusedException refused)
        {
            outside.Error.WriteLine($"{reading}: {refused.Message}");
            return ExitCode.Wrong;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine(LevelsWords.NoSuchFile(reading));
            return ExitCode.Wrong;
        }
    }

    private static IReadOnlyList<ListedImpact> Impacts(string path, List<string> objections)
    {
        try
        {
            FileRead<IReadOnlyList<ListedImpact>> read = ImpactsCsv.Read(path);
            objections.AddRange(read.ProblemLines());
            return read.Content ?? [];
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
        {
            objections.Add(LevelsWords.NoSuchFile(path));
            return [];
        }
    }
}
