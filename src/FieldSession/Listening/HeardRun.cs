using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>One run as a recording holds it, and whether a verdict can rest on it.</summary>
/// <param name="Recording">What would be kept.</param>
/// <param name="Objection">Why nothing of it is kept, and what to do; null: it is kept.</param>
/// <param name="Slope">The recorder's level on the typed ones; null: too few readings to tell.</param>
public sealed record HeardRun(RunRecording Recording, Objection? Objection, GainSlope? Slope)
{
    private const double ShortestS = 3;
    private const double TypedWindowS = 8;

    /// <summary>Puts together what is kept of a run.</summary>
    /// <param name="run">The run as the recording's meter was asked for it.</param>
    /// <param name="survey">What was read of the recording.</param>
    /// <param name="clock">When it began.</param>
    /// <param name="levels">What its meter heard.</param>
    public static HeardRun Of(MeteredRun run, Survey survey, RecordingClock clock, RecordingLevels levels)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(levels);
        (HeardWindow Asked, WindowLevels Heard)[] heard =
        [
            .. run
                .Windows.Select((asked, i) => (asked, levels.Windows[run.First + i]))
                .Where(pair => pair.Item2.HeardS >= ShortestS && pair.Item2.LZeqDb is not null),
        ];
        RunRecording recording = new(run.Number, survey.Sha256, run.Chain)
        {
            RateHz = survey.RateHz,
            Bits = survey.Bits,
            Channel = survey.Channel,
            BegunAt = clock.BegunAt,
            Seconds = Math.Round(survey.Seconds, 3),
            HalfRangeS = clock.Offset!.HalfRangeS,
            ClockBy = clock.Offset.Source,
            RateError = clock.Offset.RateError,
            RingFromHz = run.Ring.LowerHz,
            RingToHz = run.Ring.UpperHz,
            NotHeard = run.Readings - heard.Length,
            Segments = [.. heard.Select(pair => KeptLevels.Of(pair.Asked, pair.Heard, run.DecayOf(pair.Asked, levels)))],
        };
        GainSlope? slope = GainSlope.Of([
            .. heard
                .Where(pair => !pair.Asked.IsImpact && pair.Heard is { LAeqDb: not null, IsOverloaded: false })
                .Select(pair => (pair.Asked.Reading.Levels.MidpointDb, pair.Heard.LAeqDb!.Value)),
        ]);
        return new(recording, WhyNot(recording, run, clock, levels, slope), slope);
    }

    private static Objection? WhyNot(
        RunRecording recording,
        MeteredRun run,
        RecordingClock clock,
        RecordingLevels levels,
        GainSlope? slope
    ) =>
        recording switch
        {
            { Segments.Count: 0 } => new(ListeningWords.OnlySilence(run.Number), ListeningWords.CheckMicrophone),
            _ when recording.Segments.TrueForAll(heard => heard.IsOverloaded) => new(
                ListeningWords.AllClipped(run.Number),
                ListeningWords.LowerGain
            ),
            _ when recording.Segments.TrueForAll(heard => heard.HasSpeech) => new(
                ListeningWords.AllSpeech(run.Number),
                ListeningWords.KeepSilent
            ),
            _ when slope?.IsSuspect == true => new(ListeningWords.AutomaticGain(run.Number, slope), ListeningWords.GainOff),
            _ when AgainstTyped(run, clock, levels) is { } seconds => new(
                ListeningWords.TypedContradict(run.Number, seconds),
                ListeningWords.GiveRightTime
            ),
            _ => null,
        };

    // the typed levels are nearly blind towards too early: they contradict a clock, and never replace one
    private static double? AgainstTyped(MeteredRun run, RecordingClock clock, RecordingLevels levels)
    {
        TypedRange[] typed =
        [
            .. run
                .Windows.Where(window => !window.IsImpact)
                .Select(window => new TypedRange(window.StoredS, window.Reading.Levels.LowDb, window.Reading.Levels.HighDb)),
        ];
        ImmutableArray<LoggedLevel> log =
        [
            .. levels
                .Trace.LAFDb.Index()
                .Where(level => level.Item is not null)
                .Select(level => new LoggedLevel(levels.Trace.FirstS + (level.Index * levels.Trace.StepS), level.Item!.Value)),
        ];
        double gain = GainBetween(typed, run, levels);
        ClockOffset? byTyped = TypedAlignment
            .Of([.. typed.Select(one => one with { LowDb = one.LowDb - gain, HighDb = one.HighDb - gain })], log, TypedWindowS)
            ?.Offset;
        ClockOffset here = new(0, clock.Offset!.HalfRangeS, clock.Offset.Source);
        return byTyped is not null && here.Contradicts(byTyped, 0) ? byTyped.OffsetS : null;
    }

    // typed in dB(A), recorded in dB re full scale: the median distance puts one over the other
    private static double GainBetween(TypedRange[] typed, MeteredRun run, RecordingLevels levels)
    {
        double[] distances =
        [
            .. run
                .Windows.Select((window, i) => (Window: window, Heard: levels.Windows[run.First + i]))
                .Where(pair => !pair.Window.IsImpact && pair.Heard.L50Db is not null)
                .Select(pair => pair.Window.Reading.Levels.MidpointDb - pair.Heard.L50Db!.Value),
        ];
        return distances.Length == 0 || typed.Length == 0 ? 0 : Quantile.Median(distances);
    }
}

/// <summary>Which runs a recording holds, by the clock.</summary>
public static class RunsHeard
{
    /// <summary>The runs of which it holds half of the windows and more; or why there is none, and what to do.</summary>
    /// <param name="study">The study.</param>
    /// <param name="survey">What was read of the recording.</param>
    /// <param name="clock">When it began.</param>
    /// <param name="asked">The only run that is asked for; null: all.</param>
    public static (ImmutableArray<Run> Runs, Objection? Objection) Of(Study study, Survey survey, RecordingClock clock, int? asked)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(clock);
        ImmutableArray<Run> runs =
        [
            .. study.Runs.Where(run => (asked is null || run.Number == asked) && IsHeld(study, run, survey.Seconds, clock.Offset!)),
        ];
        return runs.IsEmpty ? ([], WhyNone(study, survey, clock, asked)) : (runs, null);
    }

    private static Objection WhyNone(Study study, Survey survey, RecordingClock clock, int? asked)
    {
        Run? part = study.Runs.Find(run =>
            (asked is null || run.Number == asked) && HeldOf(study, run, survey.Seconds, clock.Offset!).Held > 0
        );
        return survey.HasPistonphone ? new Objection(ListeningWords.PistonphoneAlone, ListeningWords.GiveOtherTone)
            : part is null ? new Objection(ListeningWords.NoRunInIt(clock.BegunAt, survey.Seconds, asked), ListeningWords.GiveRightTime)
            : new Objection(ListeningWords.LessThanHalfOfRun(part.Number), ListeningWords.JoinParts);
    }

    private static bool IsHeld(Study study, Run run, double seconds, ClockOffset offset)
    {
        (int held, int asked) = HeldOf(study, run, seconds, offset);
        return held > 0 && held * 2 >= asked;
    }

    private static (int Held, int Asked) HeldOf(Study study, Run run, double seconds, ClockOffset offset)
    {
        ImmutableArray<HeardWindow> windows = HeardWindow.Of(run, study.Plan!.Route, offset);
        return (windows.Count(window => window.Window.FromS >= 0 && window.Window.ToS <= seconds), windows.Length);
    }
}

/// <summary>Takes over what is kept of a window, to a thousandth of a dB.</summary>
internal static class KeptLevels
{
    private const int HighestBand = -2;
    private const int Digits = 3;

    /// <summary>What is kept.</summary>
    public static HeardSegment Of(HeardWindow asked, WindowLevels heard, RingDecayTime? decay) =>
        new(asked.Reading.Mark.Number, Kept(heard.Window.FromS), Kept(heard.HeardS))
        {
            LAeqDb = Kept(heard.LAeqDb),
            LCeqDb = Kept(heard.LCeqDb),
            LAFmaxDb = Kept(heard.LAFmaxDb),
            LAFminDb = Kept(heard.LAFminDb),
            L10Db = Kept(heard.L10Db),
            L50Db = Kept(heard.L50Db),
            L90Db = Kept(heard.L90Db),
            BandsDb = heard.Bands.IsEmpty
                ? null
                : [.. Enumerable.Range(HeardSegment.LowestBand, HighestBand - HeardSegment.LowestBand + 1).Select(n => BandOf(heard, n))],
            RingDb = Kept(heard.RingDb),
            RingMedianDb = Kept(heard.RingMedianDb),
            ProminenceDb = Kept(heard.ProminenceDb),
            SpectrumDb = heard.Spectrum is { } spectrum ? Spectrum(spectrum) : null,
            RingLastsS = decay is null ? null : Math.Round(decay.T60S, 5),
            Clips = heard.ClipEvents,
            HasSpeech = heard.IsLikeSpeech,
        };

    private static double? BandOf(WindowLevels heard, int n) =>
        Kept(heard.Bands.Where(band => band.N == n).Select(band => band.LevelDb).FirstOrDefault());

    // means over a step each: finer than the ear needs, coarser than any word that was spoken
    private static ImmutableList<double>? Spectrum(PowerSpectrum spectrum)
    {
        double?[] levels =
        [
            .. Enumerable
                .Range(0, HeardSegment.SpectrumLength)
                .Select(i => HeardSegment.SpectrumFromHz + (i * HeardSegment.SpectrumStepHz))
                .Select(hz =>
                    Level.OfMeanSquare(
                        spectrum.MeanSquare(new(hz - (HeardSegment.SpectrumStepHz / 2), hz + (HeardSegment.SpectrumStepHz / 2)))
                            / HeardSegment.SpectrumStepHz
                    )
                ),
        ];
        return levels.Any(level => level is null) ? null : [.. levels.Select(level => Math.Round(level!.Value, 2))];
    }

    private static double? Kept(double? level) => level is { } known ? Kept(known) : null;

    private static double Kept(double number) => Math.Round(number, Digits);
}
