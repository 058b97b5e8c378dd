using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

/// <summary>A recording that can't carry a verdict: what is wrong is said with what to do, and nothing of it is stored.</summary>
public sealed class BadRecordingsTests
{
    private const int FullRateHz = 48_000;

    [Fact]
    public void A_dead_channel_is_refused_and_the_live_one_named()
    {
        using ADayWithRecorder day = new();
        string stereo = BesideSilence(day.Drive());
        Refused(day, [stereo], "channel 1 is dead; give --channel 2");
        day.Prompt.Must(0, ["listen", day.Prompt.Study, stereo, "--channel", "2"]);
        Assert.Equal(2, Assert.Single(day.Study.Recordings).Channel);
    }

    [Fact]
    public void Voices_in_every_window_are_refused()
    {
        using ADayWithRecorder day = new(rateHz: FullRateHz);
        Random lot = new(3);

        // syllables, five a second, 24 dB up and down
        string path = day.Drive((_, samples) => Scaled(samples, FullRateHz / 5, _ => -24 * lot.NextDouble()));
        Refused(day, [path], "run 1: the level swings as in speech in every window; keep silent in windows");
    }

    [Fact]
    public void An_automatic_gain_is_found_by_what_was_typed_and_refused()
    {
        using ADayWithRecorder day = new(steady: 9, rateHz: FullRateHz);

        // the levels of the lanes rise by 2 dB from one to the next; half of it is taken away
        string path = day.Drive((_, samples) => Scaled(samples, FullRateHz, second => -Math.Max(0, second - 6) / 16.0));
        Refused(day, [path], "run 1: automatic gain suspected, 0.");
    }

    [Fact]
    public void Typed_levels_that_contradict_the_clock_are_refused()
    {
        using ADayWithRecorder day = new(steady: 9, rateHz: FullRateHz);
        string path = day.Drive();
        File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(path).AddSeconds(12));
        Refused(day, [path], "run 1: by the typed levels it began ");
    }

    [Fact]
    public void A_tone_of_250_Hz_is_named_and_not_used()
    {
        using ADayWithRecorder day = new();
        day.Drive();
        float[] tone = [.. Enumerable.Range(0, 8 * 16_000).Select(i => (float)(0.1 * Math.Sin(2 * Math.PI * 250 * i / 16_000)))];
        string path = day.Written("pistonphone.wav", tone, day.Prompt.Clock.Now);
        Refused(day, [path], "its tone is 250 Hz and not used; give a calibrator's of 1 kHz, or --gain");
        Assert.Empty(day.Study.ChainGains);
    }

    [Fact]
    public async Task A_file_that_grows_while_it_is_read_is_refused_until_the_recorder_stops()
    {
        using ADayWithRecorder day = new(rateHz: FullRateHz);
        string path = day.Drive();
        DateTime closed = File.GetLastWriteTimeUtc(path);
        using (CancellationTokenSource stop = new())
        {
            Task recorder = Task.Run(() => Recording(path, stop.Token));
            Refused(day, [path], "the file grew while it was read; stop the recorder");
            await stop.CancelAsync();
            await recorder;
        }

        File.SetLastWriteTimeUtc(path, closed);
        day.Prompt.Must(0, ["listen", day.Prompt.Study, path]);
        Assert.Single(day.Study.Recordings);
    }

    [Fact]
    public void A_pipe_is_refused_because_a_run_is_read_twice()
    {
        using ADayWithRecorder day = new();
        day.Drive();
        Refused(day, ["-"], "a pipe is read once, a run twice; write it to a file and give that");
    }

    [Fact]
    public void The_smaller_part_of_a_split_recording_is_refused_and_the_larger_taken_as_far_as_it_goes()
    {
        using ADayWithRecorder day = new(steady: 5);
        float[] all = [];
        DateTimeOffset begun = default;
        day.Drive((at, samples) => (begun, all) = (at, [.. samples]));
        int cut = 75 * 16_000;
        string first = day.Written("first.wav", all[..cut], begun);
        string rest = day.Written("rest.wav", all[cut..], begun.AddSeconds(75));

        string said = day.Prompt.Must(2, ["listen", day.Prompt.Study, first, rest]);

        Assert.Contains(
            "it holds less than half of run 1; join the parts of a split recording into one file",
            said,
            StringComparison.Ordinal
        );
        Assert.Contains("run 1: 4 of 6 readings heard", said, StringComparison.Ordinal);
        Assert.Single(day.Study.Recordings);
    }

    [Theory]
    [InlineData("[190, 260]", 190, 260)]
    [InlineData("[150.5, 300]", 150.5, 300)]
    public void The_plan_names_the_ring_band_that_is_listened_to(string band, double low, double high)
    {
        using ADayWithRecorder day = new(morePlan: $"\nring_band_hz = {band}\n");
        day.Drive();
        day.Listen();
        RunRecording kept = Assert.Single(day.Study.Recordings);
        Assert.Equal((low, high), (kept.RingFromHz, kept.RingToHz));
    }

    [Theory]
    [InlineData("[282, 178]")]
    [InlineData("[178]")]
    [InlineData("[50, 282]")]
    [InlineData("[178, 190]")]
    [InlineData("\"ring\"")]
    public void A_ring_band_that_is_none_is_refused_by_line(string band)
    {
        using AtThePrompt prompt = new();
        prompt.Write("plan/plan.toml", $"{AWholeDay.Plan}\nring_band_hz = {band}\n");
        prompt.Write("plan/route.csv", "segment,kind,speed_kmh,length_m\nLane,smooth,72,300\n");
        Assert.Contains(
            "'ring_band_hz' is two numbers from 100 to 400, at least 20 apart",
            prompt.Must(2, ["start", prompt.Here("plan"), prompt.Study]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_archive_has_a_line_for_the_ring_once_the_key_is_open()
    {
        using ADayWithRecorder day = new();
        for (int run = 0; run < 4; run++)
        {
            day.Drive();
        }

        day.Listen();
        string[] asked = ["archive", day.Prompt.Here("."), "--json"];
        Assert.DoesNotContain("\"ring\"", day.Prompt.Must(0, asked), StringComparison.Ordinal);
        day.Prompt.Predict(day.Study.Codes.First());
        day.Prompt.Must(0, day.Prompt.RevealWords("a.key"));
        Assert.Contains("\"ring\"", day.Prompt.Must(0, asked), StringComparison.Ordinal);
    }

    private static void Refused(ADayWithRecorder day, string[] files, string why)
    {
        Assert.Contains(why, day.Prompt.Must(2, ["listen", day.Prompt.Study, .. files]), StringComparison.Ordinal);
        Assert.Empty(day.Study.Recordings);
    }

    // as if a recorder wrote on: a few samples at a time, far behind what the header says
    private static void Recording(string path, CancellationToken stop)
    {
        using FileStream file = new(path, FileMode.Append, FileAccess.Write, FileShare.ReadWrite);
        while (!stop.IsCancellationRequested)
        {
            file.Write(new byte[64]);
            file.Flush();
            Thread.Sleep(1);
        }
    }

    private static void Scaled(float[] samples, int step, Func<int, double> gainDb)
    {
        for (int block = 0; block * step < samples.Length; block++)
        {
            float gain = (float)Math.Pow(10, gainDb(block) / 20);
            foreach (ref float sample in samples.AsSpan(block * step, Math.Min(step, samples.Length - (block * step))))
            {
                sample *= gain;
            }
        }
    }

    // the same file with a silent channel before the other
    private static string BesideSilence(string path)
    {
        byte[] mono = File.ReadAllBytes(path);
        DateTime closed = File.GetLastWriteTimeUtc(path);
        byte[] stereo = new byte[44 + (2 * (mono.Length - 44))];
        mono.AsSpan(0, 44).CopyTo(stereo);
        BitConverter.TryWriteBytes(stereo.AsSpan(4), stereo.Length - 8);
        stereo[22] = 2;
        BitConverter.TryWriteBytes(stereo.AsSpan(28), 2 * BitConverter.ToInt32(mono, 28));
        stereo[32] = 4;
        BitConverter.TryWriteBytes(stereo.AsSpan(40), stereo.Length - 44);
        for (int i = 44; i < mono.Length; i += 2)
        {
            mono.AsSpan(i, 2).CopyTo(stereo.AsSpan(46 + (2 * (i - 44))));
        }

        File.WriteAllBytes(path, stereo);
        File.SetLastWriteTimeUtc(path, closed);
        return path;
    }
}
