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
            [.. run.Windows.Select((asked, i) => (asked, levels.Windows[run.First + i])).Where(pair => pair.Item2.HeardS >= ShortestS && pair.Item2.LZeqDb is not null)];
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
        GainSlope? slope = GainSlope.Of([.. heard.Where(pair => !pair.Asked.IsImpact && pair.Heard is { LAeqDb: not null, IsOverloaded: false })
            .Select(pair => (pair.Asked.Reading.Levels.MidpointDb, pair.Heard.LAeqDb!.Value))]);
        return new(recording, WhyNot(recording, run, clock, levels, slope), slope);
    }

    private static Objection? WhyNot(RunRecording recording, MeteredRun run, RecordingClock clock, RecordingLevels levels, GainSlope? slope) => recording switch
    {
        { Segments.Count: 0 } => new(ListeningWords.OnlySilence(run.Number), ListeningWords.CheckMicrophone),
        _ when recording.Segments.TrueForAll(heard => heard.IsOverloaded) => new(ListeningWords.AllClipped(run.Number), ListeningWords.LowerGain),
        _ when recording.Segments.TrueForAll(heard => heard.HasSpeech) => new(ListeningWords.AllSpeech(run.Number), ListeningWords.KeepSilent),
        _ when slope?.IsSuspect == true => new(ListeningWords.AutomaticGain(run.Number, slope), ListeningWords.GainOff),
        _ when AgainstTyped(run, clock, levels) is { } seconds => new(ListeningWords.TypedContradict(run.Number, seconds), ListeningWords.GiveRightTime),
        _ => null,
    };

    // the typed levels are nearly blind towards too early: they contradict a clock, and never replace one
    private static double? AgainstTyped(MeteredRun run, RecordingClock clock, RecordingLevels levels)
    {
        TypedRange[] typed =
            [.. run.Windows.Where(window => !window.IsImpact).Select(window => new TypedRange(window.StoredS, window.Reading.Levels.LowDb, window.Reading.Levels.HighDb))];
        ImmutableArray<LoggedLevel> log =
        [
            .. levels.Trace.LAFDb.Index().Where(level => level.Item is not null)
                .Select(level => new LoggedLevel(levels.Trace.FirstS + (level.Index * levels.Trace.StepS), level.Item!.Value)),
        ];
        double gain = GainBetween(typed, run, levels);
        ClockOffset? byTyped = TypedAlignment.Of([.. typed.Select(one => one with { LowDb = one.LowDb - gain, HighDb = one.HighDb - gain })], log, TypedWindowS)?.Offset;
        ClockOffset here = new(0, clock.Offset!.HalfRangeS, clock.Offset.Source);
        return byTyped is not null && here.Contradicts(byTyped, 0) ? byTyped.OffsetS : null;
    }

    // typed in dB(A), recorded in dB re full scale: the median distance puts one over the other
    private static double GainBetween(TypedRange[] typed, MeteredRun run, RecordingLevels levels)
    {
        double[] distances =
        [
            .. run.Windows.Select((window, i) => (Window: window, Heard: levels.Windows[run.First + i]))
                .Where(pair => !pair.Window.IsImpact && pair.Heard.L50Db is not null)
                .Select(pair => pair.Window.Reading.Levels.MidpointDb - pair.Heard.L50Db!.Value),
        ];
        return distances.Length == 0 || typed.Length == 0 ? 0 : Quantile.Median(distances);
    }
}
