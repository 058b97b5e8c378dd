using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>How the recordings are, at a stop: of the last run in full, of all runs how many there are; what a meter's log doubts. Never a level, never a code.</summary>
internal static class StopRecordings
{
    /// <summary>The lines; none where nothing was recorded or logged.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        if (study.Recordings.Count > 0)
        {
            yield return DrivingScreenWords.RunsRecorded(study.Recordings.Count, study.Runs.Count);
        }

        if (study.Recordings.Find(recording => recording.Run == study.LastRun?.Number) is { } last)
        {
            foreach (string words in RecordingWords.Of(RecordingHealth.Of(study, last)))
            {
                yield return $"  {words}";
            }
        }

        if (study.LogComparisons.LastOrDefault() is { } log)
        {
            string[] doubts = [.. log.DoubtsIn(study).Select(doubt => doubt.Run.PlaceOf(doubt.Reading))];
            string[] traffic = [.. log.TrafficIn(study).Select(found => found.Run.PlaceOf(found.Reading))];
            yield return DrivingScreenWords.LogSays(doubts, traffic);
        }
    }
}
