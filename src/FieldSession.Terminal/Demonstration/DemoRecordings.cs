using FieldSession.State;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Demonstration;

/// <summary>
/// What a recorder in a demo's car would have written: made from the typed levels by seeded noise, with a ring of the air in the tyre that
/// every candidate makes weaker. No sound of a real car is in it.
/// </summary>
internal static class DemoRecordings
{
    private const int RateHz = 8000;
    private const double AroundS = 5;
    private const double AroundMin = 5;
    private const double ToneS = 8;
    private const double RingBelowNoiseDb = 4;
    private const double WeakerRingDb = 4;
    private const double BlowOverNoiseDb = 10;
    private const double BlowBeforeStoredS = 6;
    private const double ScatterDb = 0.3;

    /// <summary>Makes the recordings of the runs that were driven, and listens to them.</summary>
    /// <param name="files">Where the demo lies; they go into a folder beside it.</param>
    /// <param name="logbook">The study's one door.</param>
    /// <param name="outside">The world outside.</param>
    /// <returns>An exit code.</returns>
    /// <exception cref="IOException">The disk does not take them.</exception>
    public static int Take(DemoFolder files, Logbook logbook, Surroundings outside)
    {
        Directory.CreateDirectory(files.Recordings);
        Study study = logbook.Study;
        SpecCode control = new(files.Demo.Codes[0]);
        string[] runs = [.. study.Runs.AsParallel().AsOrdered().Select(run => Run(files.Recordings, run, study, run.Code == control))];
        Session day = study.Sessions[0];
        string before = Tone(
            files.Recordings,
            "tone-before",
            day.Before?.LevelDb ?? study.Plan!.CalibratorDb,
            study.Runs[0].Started.At.AddMinutes(-AroundMin)
        );
        string after = Tone(
            files.Recordings,
            "tone-after",
            day.After?.LevelDb ?? study.Plan!.CalibratorDb,
            study.LastRun!.Readings.Last().Mark.At.AddMinutes(AroundMin)
        );
        return ListenCommand.Take(logbook, new AskedListening(files.Study, [before, .. runs, after]), outside);
    }

    private static string Run(string folder, Run run, Study study, bool isControl)
    {
        DateTimeOffset begun = run.Started.At.AddSeconds(-AroundS);
        Random lot = new(run.Number);
        double Scatter() => ScatterDb * ((2 * lot.NextDouble()) - 1);
        double ofRun = Scatter();
        List<HeardStretch> stretches = [];
        double from = 0;
        foreach (Reading reading in run.Readings)
        {
            double to = (reading.Mark.At - begun).TotalSeconds;
            bool isImpact = study.Plan!.Route[reading.Segment - 1].Kind.IsImpact;
            double noise = reading.Levels.MidpointDb - (isImpact ? BlowOverNoiseDb : 0) + ofRun;
            stretches.Add(
                new(from, to, noise, noise - RingBelowNoiseDb - (isControl ? 0 : WeakerRingDb) + Scatter())
                {
                    ImpactAtS = isImpact ? to - BlowBeforeStoredS : null,
                    RingLastsS = isControl ? 0.25 : 0.18,
                }
            );
            from = to;
        }

        return Written(folder, $"run{run.Number}", SoundOfRun.Of(run.Number, RateHz, from + AroundS, stretches), begun);
    }

    private static string Tone(string folder, string name, double levelDb, DateTimeOffset begun) =>
        Written(folder, name, SoundOfRun.Tone(RateHz, ToneS, levelDb), begun);

    // the time of a file is when its recorder was stopped
    private static string Written(string folder, string name, float[] samples, DateTimeOffset begun)
    {
        string path = Path.Combine(folder, $"{name}.wav");
        SoundOfRun.Write(path, samples, RateHz);
        File.SetLastWriteTimeUtc(path, begun.AddSeconds((double)samples.Length / RateHz).UtcDateTime);
        return path;
    }
}
