using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Journal;

namespace FieldSession.Listening;

/// <summary>What a first reading of a recording brought: enough to say when it began, and whether it can be listened to at all.</summary>
/// <param name="Sha256">SHA-256 of the file, 64 hex digits.</param>
/// <param name="RateHz">Samples a second.</param>
/// <param name="Bits">Bits of a sample.</param>
/// <param name="Channel">The channel that was read, from 1.</param>
/// <param name="Seconds">Its length, s.</param>
public sealed record Survey(string Sha256, int RateHz, int Bits, int Channel, double Seconds)
{
    /// <summary>When the file was last written to; null: not known, as of what is piped in.</summary>
    public DateTimeOffset? WrittenAt { get; init; }

    /// <summary>When it began by the recorder's own clock, in a zone that the file does not tell; null: not told.</summary>
    public DateTime? ToldBegin { get; init; }

    /// <summary>When the third knock of each three was heard, s from the first sample.</summary>
    public ImmutableArray<double> Knocks { get; init; } = [];

    /// <summary>The calibrator's tone in it; null: none.</summary>
    public CalibratorTone? Tone { get; init; }

    /// <summary>Whether a tone of 250 Hz was found instead.</summary>
    public bool HasPistonphone { get; init; }

    /// <summary>Whether the channel read is silent, or 60 dB and more below another.</summary>
    public bool IsDead { get; init; }

    /// <summary>The loudest channel, from 1.</summary>
    public int LoudestChannel { get; init; } = 1;

    /// <summary>Whether the file grew while it was read.</summary>
    public bool HasGrown { get; init; }
}

/// <summary>What somebody says about recordings beside the files themselves; null: the files have to say it.</summary>
/// <param name="Zone">The zone of the recorder's own clock, as its distance from UTC.</param>
/// <param name="OffsetS">By how much the recorder's clock was ahead of the laptop's, s.</param>
/// <param name="BegunAt">When the recording began.</param>
/// <param name="Run">Number of the run that it belongs to.</param>
/// <param name="Trust">Which clock is right where two contradict each other.</param>
public sealed record ListeningTerms(
    TimeSpan? Zone = null,
    double? OffsetS = null,
    DateTimeOffset? BegunAt = null,
    int? Run = null,
    Aligning.ClockSource? Trust = null
);

/// <summary>What rules out a recording after its first reading.</summary>
public static class SurveyObjections
{
    /// <summary>Why nothing is kept of it; null: nothing rules it out.</summary>
    public static Objection? Of(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return survey switch
        {
            { HasGrown: true } => new(ListeningWords.StillRecording, ListeningWords.StopRecorder),
            { IsDead: true } when survey.LoudestChannel != survey.Channel => new(
                ListeningWords.ChannelIsDead(survey.Channel),
                ListeningWords.ChooseChannel(survey.LoudestChannel)
            ),
            { IsDead: true } => new(ListeningWords.SilenceAlone, ListeningWords.CheckMicrophone),
            _ => null,
        };
    }

    /// <summary>What is odd about it although it can be taken.</summary>
    public static IEnumerable<string> Remarks(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        if (survey.HasPistonphone)
        {
            yield return ListeningWords.Pistonphone;
        }

        if (survey.RateHz < WeightingFilters.LowestRateHz)
        {
            yield return ListeningWords.BandsAlone(survey.RateHz);
        }
    }
}
