using System.Globalization;
using FieldSession.State;
using FieldSession.Terminal.Demonstration;

namespace FieldSession.Tests.Making;

/// <summary>
/// A day by commands with a recorder on: every run is driven by the clock, typed line by line, and its sound is made and written as a WAV
/// file, whose file time says when the recorder was stopped. What the ring does is the test's to say.
/// </summary>
internal sealed class ADayWithRecorder : IDisposable
{
    private const double SegmentS = 16;
    private const double BeforeS = 6;
    private const double BehindS = 8;
    private readonly int _rateHz;
    private readonly int _segments;

    public ADayWithRecorder(int steady = 3, string order = "R 1 R 1", int rateHz = 16_000, int seed = 1, string morePlan = "")
    {
        _rateHz = rateHz;
        _segments = steady + 1;
        Prompt = new AtThePrompt(seed);
        Prompt.Write("plan/plan.toml", AWholeDay.Plan.Replace("R 1 R 1 R 1", order, StringComparison.Ordinal) + morePlan);
        Prompt.Write("plan/route.csv", RouteOf(steady));
        Prompt.Must(0, ["start", Prompt.Here("plan"), Prompt.Study]);
        Prompt.Must(0, ["seal", Prompt.Study, "--specs", Prompt.Write("specs.txt", "ALPHA\nBETA\n"), "--key", Prompt.Here("a.key")]);
        Prompt.Enter(AWholeDay.Ready);
    }

    public AtThePrompt Prompt { get; }

    /// <summary>The recordings made so far, in the order of the runs.</summary>
    public List<string> Files { get; } = [];

    /// <summary>Level of the ring, dB, of a code on a segment; 60 where nothing is said.</summary>
    public Func<SpecCode, int, double> RingDb { get; set; } = (_, _) => 60;

    /// <summary>How long the ring lasts after the impact, s.</summary>
    public Func<SpecCode, double> RingLastsS { get; set; } = _ => 0.25;

    /// <summary>By how much runs scatter, dB.</summary>
    public double RunScatterDb { get; init; } = 0.2;

    public Study Study => Prompt.Now();

    /// <summary>Drives the next run as the order asks, and leaves its recording.</summary>
    /// <param name="change">What is done to the samples before they are written: when the recording began, and the samples.</param>
    public string Drive(Action<DateTimeOffset, float[]>? change = null)
    {
        SpecCode code = Study.CodeAsked!.Value;
        int run = Study.Runs.Count + 1;
        Random lot = new(100 + run);
        DateTimeOffset begun = Prompt.Clock.Now + TimeSpan.FromMinutes(3);
        DateTimeOffset start = begun.AddSeconds(BeforeS);
        double runDb = RunScatterDb * ((2 * lot.NextDouble()) - 1);
        EnterAt(start, $"run {code}");
        List<HeardStretch> stretches = [new(0, BeforeS, 50, 40)];
        for (int segment = 1; segment <= _segments; segment++)
        {
            stretches.Add(Passed(code, segment, start.AddSeconds(segment * SegmentS), begun, runDb, lot));
        }

        double seconds = BeforeS + (_segments * SegmentS) + BehindS;
        float[] samples = SoundOfRun.Of(run, _rateHz, seconds, [.. stretches, new(seconds - BehindS, seconds, 50, 40)]);
        change?.Invoke(begun, samples);
        return Written($"run{run}.wav", samples, begun);
    }

    /// <summary>Writes a recording that began at a time.</summary>
    public string Written(string name, float[] samples, DateTimeOffset begun)
    {
        string path = Prompt.Here(name);
        SoundOfRun.Write(path, samples, _rateHz);
        File.SetLastWriteTimeUtc(path, begun.AddSeconds((double)samples.Length / _rateHz).UtcDateTime);
        Files.Add(path);
        return path;
    }

    /// <summary>The calibrator's tone in a file of its own, now.</summary>
    public string Tone(double levelDb = 94, string name = "tone.wav") =>
        Written(name, SoundOfRun.Tone(_rateHz, 8, levelDb), Prompt.Clock.Now);

    /// <summary>Types one line at a time of the clock.</summary>
    public void EnterAt(DateTimeOffset at, string line)
    {
        Prompt.Clock.Now = at - TimeSpan.FromMinutes(1);
        Prompt.Enter(line + "\n");
    }

    /// <summary>Takes all recordings into the study.</summary>
    public string Listen(params string[] more) => Prompt.Must(0, ["listen", Prompt.Study, .. Files, .. more]);

    public void Dispose() => Prompt.Dispose();

    private HeardStretch Passed(SpecCode code, int segment, DateTimeOffset stored, DateTimeOffset begun, double runDb, Random lot)
    {
        bool isImpact = segment == _segments;
        double level = 57 + (2 * segment) + runDb + (0.4 * ((2 * lot.NextDouble()) - 1));
        EnterAt(stored, isImpact ? Number(level + 8) : $"{Number(level - 1)}-{Number(level + 1)}");
        double to = (stored - begun).TotalSeconds;
        return new(to - SegmentS, to, level, RingDb(code, segment) + runDb)
        {
            ImpactAtS = isImpact ? to - 6 : null,
            RingLastsS = RingLastsS(code),
        };
    }

    private static string RouteOf(int steady) =>
        string.Concat(
            "segment,kind,speed_kmh,length_m\n",
            string.Concat(
                Enumerable.Range(1, steady).Select(segment => $"Lane {segment},{(segment % 2 == 0 ? "coarse" : "smooth")},72,300\n")
            ),
            "Bridge joint,impact,72,300\n"
        );

    // never a whole number: a range in tenths behind whole ones would be asked about
    private static string Number(double level) => ((Math.Round(level * 5) / 5) + 0.1).ToString("0.0", CultureInfo.InvariantCulture);
}
