using System.Text.Json;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Commands;

public sealed class LevelsCommandTests : IDisposable
{
    private readonly AtThePrompt _prompt = new();

    public void Dispose() => _prompt.Dispose();

    /// <summary>Source: case R04-calibrator, numbers that the signals were made with.</summary>
    [Fact]
    public void The_tone_before_and_after_gives_gain_and_drift()
    {
        RecordingCase reference = RecordingCase.Open("R04-calibrator");
        using JsonDocument json = Json(
            "levels",
            reference.PathOf("before.flac"),
            "--tone",
            "94",
            "--after",
            reference.PathOf("after.flac"),
            "--json"
        );

        JsonElement calibration = json.RootElement.GetProperty("calibration");
        reference.Holds("gain_db", calibration.GetProperty("gain_db").GetDouble());
        reference.Holds("drift_db", calibration.GetProperty("drift_db").GetDouble());
        reference.Holds("tone.start_s", calibration.GetProperty("tone_start_s").GetDouble());
        reference.Holds("tone.end_s", calibration.GetProperty("tone_end_s").GetDouble());
    }

    [Fact]
    public void A_recording_without_tone_is_for_differences_only_and_clipping_is_told()
    {
        RecordingCase reference = RecordingCase.Open("R04-calibrator");
        using JsonDocument json = Json("levels", reference.PathOf("clip.flac"), "--tone", "94", "--json");

        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("calibration").ValueKind);
        reference.Holds("clip.events", json.RootElement.GetProperty("clip_events").GetInt32());
        string remarks = json.RootElement.GetProperty("remarks").ToString();
        Assert.Contains("good for differences only", remarks, StringComparison.Ordinal);
        Assert.Contains("its levels don't count", remarks, StringComparison.Ordinal);
    }

    /// <summary>Source: case R06-band-levels, scipy.</summary>
    [Fact]
    public void Bands_and_ring_are_in_the_answer_by_their_exact_middles()
    {
        RecordingCase reference = RecordingCase.Open("R06-band-levels");
        using JsonDocument json = Json("levels", reference.PathOf("one.flac"), "--gain", "110", "--json");

        JsonElement window = Assert.Single(json.RootElement.GetProperty("windows").EnumerateArray());
        Assert.All(
            new[] { "126", "158", "200", "251", "316", "398" },
            band => reference.Holds($"one.LZeq.{band}", window.GetProperty("bands_db").GetProperty(band).GetDouble())
        );
        reference.Holds("one.band.178-282", window.GetProperty("ring_db").GetDouble());
        Assert.Equal(JsonValueKind.Null, window.GetProperty("laeq_db").ValueKind);
    }

    /// <summary>Source: case R08-impact-decay, numbers that the signal was made with, and scipy.</summary>
    [Fact]
    public void Impacts_give_the_decay_of_the_ring_by_segment()
    {
        RecordingCase reference = RecordingCase.Open("R08-impact-decay");
        using JsonDocument json = Json("levels", reference.PathOf("impacts.flac"), "--impacts", reference.PathOf("impacts.csv"), "--json");

        JsonElement decays = json.RootElement.GetProperty("decays");
        Assert.All(
            new[] { "joint", "viaduct" },
            segment =>
            {
                reference.Holds($"{segment}.T60_true_s", decays.GetProperty(segment).GetProperty("t60_s").GetDouble());
                reference.Holds($"{segment}.T60_s", decays.GetProperty(segment).GetProperty("t60_s").GetDouble());
                reference.Holds($"{segment}.lo_s", decays.GetProperty(segment).GetProperty("lo_s").GetDouble());
                reference.Holds($"{segment}.hi_s", decays.GetProperty(segment).GetProperty("hi_s").GetDouble());
                reference.Holds($"{segment}.events", decays.GetProperty(segment).GetProperty("events").GetInt32());
            }
        );
        Assert.Equal(JsonValueKind.Null, decays.GetProperty("slab").ValueKind);
    }

    [Theory]
    [InlineData("bad.wav", "ADPCM is lossy, not for levels; record WAV or FLAC")]
    [InlineData("bad-crc.flac", "damaged near 0.1 s")]
    [InlineData("nowhere.wav", "there is no such file")]
    public void A_refused_file_ends_with_2_and_one_line_that_says_why(string name, string why)
    {
        string path = RecordingCase.Open("R03-files").PathOf(name);
        string said = _prompt.Must(ExitCode.Wrong, ["levels", path]);
        Assert.Contains(why, Assert.Single(said.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_words_are_all_told_at_once()
    {
        string said = _prompt.Must(
            ExitCode.Wrong,
            [
                "levels",
                "x.wav",
                "--gain",
                "much",
                "--tone",
                "3",
                "--window",
                "9-2",
                "--window",
                "some",
                "--channel",
                "0",
                "--raw",
                "48000,17,1",
                "--impacts",
                "none.csv",
            ]
        );
        Assert.All(
            new[]
            {
                "--gain much",
                "--tone 3",
                "--window 9-2",
                "--window some",
                "--channel 0",
                "--raw 48000,17,1",
                "none.csv: there is no such file",
                "give one of them",
            },
            part => Assert.Contains(part, said, StringComparison.Ordinal)
        );
        Assert.Contains(
            "--after: give --tone too",
            _prompt.Must(ExitCode.Wrong, ["levels", "x.wav", "--after", "y.wav"]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_words_keep_to_80_columns_and_tell_windows_one_a_line()
    {
        RecordingCase reference = RecordingCase.Open("R04-calibrator");
        string said = _prompt.Must(
            0,
            ["levels", reference.PathOf("before.flac"), "--tone", "94", "--window", "0-2", "--window", "3,5-7", "--window", "8-900"]
        );

        Assert.All(said.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("gain 112.35 dB", said, StringComparison.Ordinal);
        Assert.Contains("window 8-900 s: the recording ends at", said, StringComparison.Ordinal);
        Assert.Contains("    3.5     7.0", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Silence_a_dead_channel_and_a_pistonphone_are_said()
    {
        string file = _prompt.Here("two.raw");
        File.WriteAllBytes(
            file,
            [
                .. Enumerable
                    .Range(0, 48_000 * 6)
                    .SelectMany(i =>
                    {
                        byte[] sample = BitConverter.GetBytes((short)(9000 * Math.Sin(2 * Math.PI * 250 * i / 48_000)));
                        return new byte[] { sample[0], sample[1], 0, 0 };
                    }),
            ]
        );

        string tone = _prompt.Must(0, ["levels", file, "--raw", "48000,16,2", "--tone", "114"]);
        Assert.Contains("channel 2 is dead", tone, StringComparison.Ordinal);
        Assert.Contains("the tone is 250 Hz", tone, StringComparison.Ordinal);
        string silent = _prompt.Must(0, ["levels", file, "--raw", "48000,16,2", "--channel", "2"]);
        Assert.Contains("silence", silent, StringComparison.Ordinal);
        Assert.Contains(
            "there is no channel 3; it has 2",
            _prompt.Must(2, ["levels", file, "--raw", "48000,16,2", "--channel", "3"]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Sound_comes_through_a_pipe_with_and_without_a_header()
    {
        RecordingCase reference = RecordingCase.Open("R06-band-levels");
        byte[] flac = File.ReadAllBytes(reference.PathOf("one.flac"));

        using JsonDocument piped = Json(() => new MemoryStream(flac), "levels", "-", "--gain", "110", "--json");
        reference.Holds("one.band.178-282", piped.RootElement.GetProperty("windows")[0].GetProperty("ring_db").GetDouble());
        using JsonDocument raw = Json(() => new MemoryStream(new byte[96_000]), "levels", "-", "--raw", "48000,16,1", "--json");
        Assert.Equal(1, raw.RootElement.GetProperty("seconds").GetDouble());
    }

    private JsonDocument Json(params string[] words) => Json(() => Stream.Null, words);

    private JsonDocument Json(Func<Stream> piped, params string[] words)
    {
        StringWriter output = new();
        StringWriter error = new();
        int code = CommandLine.Run(words, _prompt.Outside() with { Output = output, Error = error, InputBytes = piped });
        Assert.True(code == ExitCode.Done, $"{error}");
        return JsonDocument.Parse(output.ToString());
    }
}
