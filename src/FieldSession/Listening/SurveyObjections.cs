using FieldSession.Acoustics;
using FieldSession.Journal;

namespace FieldSession.Listening;

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
            { IsDead: true } when survey.LoudestChannel != survey.Channel =>
                new(ListeningWords.ChannelIsDead(survey.Channel), ListeningWords.ChooseChannel(survey.LoudestChannel)),
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
